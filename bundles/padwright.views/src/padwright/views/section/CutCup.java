package padwright.views.section;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.layout.Lanes;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.words.LengthWords;

/** The cup from its floor, on top, to the rim of the tone hole, in mm, heights exaggerated. */
final class CutCup {

	/** Drawn where the instrument's own measure is not known: a usual size, from memory. */
	private static final double USUAL_CUP = 17;
	private static final double USUAL_RIM = 1;
	private static final double WALL = 0.7;
	private static final double CHIMNEY = 2.6;
	private static final double LABEL = 1.25;

	private final CupSectionState state;
	private final Palette palette;
	private final double exaggeration;
	private final double radius;
	private final double contents;

	CutCup(CupSectionState state, Palette palette, double exaggeration) {
		this.state = state;
		this.palette = palette;
		this.exaggeration = exaggeration;
		this.radius = state.cup().map(Figures::mm).orElse(USUAL_CUP) / 2;
		this.contents = height(state.layers().stream().map(SectionLayer::thickness).reduce(Length.ZERO, Length::plus));
	}

	private double height(Length length) {
		return Figures.mm(length) * exaggeration;
	}

	/** Where the depth is not known, pad and backing disc lie flush with the lip. */
	private double lip() {
		return state.depth().map(this::height)
				.orElseGet(() -> contents - state.layers().stream().filter(CutCup::isShim)
						.mapToDouble(layer -> height(layer.thickness())).sum());
	}

	private static boolean isShim(SectionLayer layer) {
		return layer.kind() == SectionLayer.Kind.SHIM || layer.kind() == SectionLayer.Kind.MISSING_SHIMS;
	}

	/** Where the rim is; where that is not known, as deep in the face as it shall sink. */
	private double rim() {
		return state.gap().map(gap -> lip() + height(gap)).orElse(contents - height(state.seat()));
	}

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		elements.add(metal("cup", Messages.of("section.cupWord", cupWords()), cup()));
		double y = 0;
		for (int index = 0; index < state.layers().size(); index++) {
			SectionLayer layer = state.layers().get(index);
			elements.add(Group.named("layer-" + index, named(layer),
					List.of(layer(layer, y, height(layer.thickness())))));
			y += height(layer.thickness());
		}
		elements.add(metal("rim", rimWords(), chimney(-1), chimney(1)));
		elements.addAll(labels());
		return elements;
	}

	private String cupWords() {
		return state.depth().map(LengthWords::withUnit).orElse("?");
	}

	private String rimWords() {
		return state.missing().map(LengthWords::roughly)
				.map(missing -> HeightSum.missingInWords(missing) + " " + Figures.shown(missing.abs()))
				.orElseGet(() -> Messages.of("section.rim"));
	}

	private static String named(SectionLayer layer) {
		return Messages.of("section.layer", layer.name(), layer.kind() == SectionLayer.Kind.MISSING_SHIMS
				? LengthWords.roughWithUnit(layer.thickness()) : LengthWords.withUnit(layer.thickness()));
	}

	private Path cup() {
		double top = Math.min(WALL, WALL * exaggeration);
		Path.Recorder cup = new Path.Recorder();
		cup.moveTo(-radius - WALL, lip());
		cup.lineTo(-radius - WALL, -top * 0.4);
		cup.curveTo(-radius - WALL, -top, -radius - WALL, -top, -radius, -top);
		cup.lineTo(radius, -top);
		cup.curveTo(radius + WALL, -top, radius + WALL, -top, radius + WALL, -top * 0.4);
		cup.lineTo(radius + WALL, lip());
		cup.lineTo(radius, lip());
		cup.lineTo(radius, 0);
		cup.lineTo(-radius, 0);
		cup.lineTo(-radius, lip());
		cup.close();
		return cup.path();
	}

	/** The wall of the tone hole on one side, open below where the tube goes on. */
	private Path chimney(int side) {
		double width = state.rim().map(Figures::mm).orElse(USUAL_RIM);
		double inner = state.hole().map(hole -> Figures.mm(hole) / 2).orElse(radius - 2 * width);
		Path.Recorder wall = new Path.Recorder();
		wall.moveTo(side * inner, rim());
		wall.lineTo(side * (inner + width), rim());
		wall.lineTo(side * (inner + width), rim() + CHIMNEY);
		wall.lineTo(side * inner, rim() + CHIMNEY);
		wall.close();
		return wall.path();
	}

	private Element metal(String id, String meaning, Path... shapes) {
		return Group.named(id, meaning, List.of(new Drawn(Path.of(shapes), Style.of(
				new SolidFill(palette.tint(palette.quiet(), 0.55)), Stroke.of(palette.ink(), 0.12)))));
	}

	private Element layer(SectionLayer layer, double top, double height) {
		Rectangle room = new Rectangle(-radius + 0.15, top, 2 * radius - 0.3, height);
		Stroke edge = Stroke.of(palette.ink(), Math.min(0.07, height / 5));
		if (layer.kind() == SectionLayer.Kind.MISSING_SHIMS) {
			return new Drawn(room, Style.of(new Hatch(Stroke.of(palette.proposal(), 0.08), 0.5, 45, false),
					Stroke.of(palette.proposal(), 0.1).dashed(0.5, 0.35)));
		}
		return new Drawn(room, Style.of(new SolidFill(fill(layer.kind())), edge));
	}

	private Ink fill(SectionLayer.Kind kind) {
		return switch (kind) {
		case BACKING -> palette.tint(palette.quiet(), 0.3);
		case SHIM, MISSING_SHIMS -> palette.tint(palette.solved(), 0.55);
		case BASE -> palette.tint(palette.read(), 0.22);
		case PAD -> palette.tint(palette.read(), 0.38);
		case FACE -> palette.tint(palette.done(), 0.35);
		case SKIN -> palette.tint(palette.warning(), 0.7);
		};
	}

	/** Names beside the layers, moved apart where they are thin, with a line from each to its own. */
	private List<Element> labels() {
		List<Double> middles = new ArrayList<>();
		double y = 0;
		for (SectionLayer layer : state.layers()) {
			double height = height(layer.thickness());
			middles.add(y + height / 2);
			y += height;
		}
		double apart = LABEL * 1.45;
		double first = middles.isEmpty() ? 0 : Math.min(middles.get(0), (y - apart * middles.size()) / 2);
		List<Double> wishes = middles.stream().map(middle -> Math.max(first, middle - apart)).toList();
		List<Double> places = Lanes.spread(wishes, apart);
		List<Element> elements = new ArrayList<>();
		double left = radius + WALL + 1;
		for (int index = 0; index < middles.size(); index++) {
			double at = places.get(index);
			Style thin = Style.stroked(palette.quiet(), 0.07);
			elements.add(new Drawn(new Line(radius - 0.6, middles.get(index), left, middles.get(index)), thin));
			elements.add(new Drawn(new Line(left, middles.get(index), left + 1.6, at), thin));
			elements.add(Text.of(named(state.layers().get(index)), left + 1.9, at + LABEL * 0.36, Face.CONDENSED, LABEL)
					.in(palette.ink()));
		}
		return elements;
	}
}
