package padwright.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.drawing.font.DejaVu;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Fill;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** Writes each element as SVG. A hatch becomes plain lines under a clip: printers treat patterns less well. */
final class SvgElements implements ElementVisitor {

	private final SvgTags tags;
	private final FontMetrics metrics;
	private int clips;

	SvgElements(SvgTags tags, FontMetrics metrics) {
		this.tags = tags;
		this.metrics = metrics;
	}

	@Override
	public void visit(Drawn drawn) {
		String outline = SvgPathData.of(List.of(drawn.geometry()));
		drawn.style().fill().ifPresent(fill -> fill(fill, drawn.geometry(), outline));
		drawn.style().stroke().ifPresent(stroke -> stroke(stroke, outline));
	}

	private void fill(Fill fill, Geometry geometry, String outline) {
		if (fill instanceof SolidFill solid) {
			tags.empty("path", "d", outline, "fill", solid.ink().toHex(), "fill-rule", "evenodd");
		} else if (fill instanceof Hatch hatch) {
			hatch(hatch, geometry, outline);
		}
	}

	private void hatch(Hatch hatch, Geometry geometry, String outline) {
		String id = "clip" + ++clips;
		tags.empty("path", "d", outline, "fill", "#ffffff", "fill-rule", "evenodd");
		tags.open("clipPath", "id", id);
		tags.empty("path", "d", outline, "clip-rule", "evenodd");
		tags.close();
		tags.open("g", "clip-path", "url(#" + id + ")");
		stroke(hatch.lines(), SvgPathData.of(hatch.over(geometry.bounds())));
		tags.close();
	}

	private void stroke(Stroke stroke, String outline) {
		List<String> attributes = new ArrayList<>(List.of("d", outline, "fill", "none",
				"stroke", stroke.ink().toHex(), "stroke-width", SvgNumber.of(stroke.width()),
				"stroke-linejoin", "round"));
		if (!stroke.dash().isEmpty()) {
			attributes.add("stroke-dasharray");
			attributes.add(numbers(stroke.dash().stream()));
		}
		tags.empty("path", attributes.toArray(String[]::new));
	}

	/** The width is given too, so that a viewer without the font squeezes another into the same room. */
	@Override
	public void visit(Text text) {
		if (text.text().isEmpty()) {
			return;
		}
		double width = metrics.width(text);
		double left = text.x() - text.anchor().fraction() * width;
		tags.text("text", text.text(), "x", SvgNumber.of(left), "y", SvgNumber.of(text.baseline()),
				"font-family", "'" + DejaVu.family(text.face()) + "', 'DejaVu Sans', Verdana, sans-serif",
				"font-weight", text.face().isBold() ? "bold" : "normal",
				"font-stretch", text.face().isCondensed() ? "condensed" : "normal",
				"font-size", SvgNumber.of(text.size()),
				"textLength", SvgNumber.of(width), "lengthAdjust", "spacingAndGlyphs",
				"fill", text.ink().toHex(), "xml:space", "preserve");
	}

	@Override
	public void visit(Picture picture) {
		Bounds bounds = picture.bounds();
		tags.empty("image", "x", SvgNumber.of(bounds.left()), "y", SvgNumber.of(bounds.top()),
				"width", SvgNumber.of(bounds.width()), "height", SvgNumber.of(bounds.height()),
				"href", "data:" + picture.data().mediaType() + ";base64," + picture.data().base64());
	}

	@Override
	public void visit(Group group) {
		List<String> attributes = new ArrayList<>();
		group.id().ifPresent(id -> attributes.addAll(List.of("data-id", id)));
		if (!group.transform().equals(Transform.NONE)) {
			attributes.addAll(List.of("transform", matrix(group.transform())));
		}
		tags.open("g", attributes.toArray(String[]::new));
		group.tooltip().ifPresent(tooltip -> tags.text("title", tooltip));
		group.elements().forEach(element -> element.accept(this));
		tags.close();
	}

	private static String matrix(Transform map) {
		return "matrix(" + numbers(Stream.of(map.xx(), map.yx(), map.xy(), map.yy(), map.dx(), map.dy())) + ")";
	}

	private static String numbers(Stream<Double> numbers) {
		return numbers.map(SvgNumber::of).collect(Collectors.joining(" "));
	}
}
