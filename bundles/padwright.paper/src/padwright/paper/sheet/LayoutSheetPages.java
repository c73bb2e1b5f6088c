package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Scene;
import padwright.engine.length.Length;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Ruler;
import padwright.paper.page.Shelves;
import padwright.paper.page.Typesetter;

/** Lays a key-layout sheet out: the map of the keys, the table of keys, the couplings, the fingerings. */
public final class LayoutSheetPages {

	/** Above the first key and below the last one of a map, mm. */
	private static final double AROUND_MAP = 24;
	private static final double GAP = 6;
	private static final double NOTE = FootRule.SIZE;

	private final LayoutSheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public LayoutSheetPages(LayoutSheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		this.width = PageSeries.width(paper);
	}

	/** The pages; printed without scaling they have the drawing scale that they state. */
	public List<Scene> pages() {
		DrawingScale scale = scale();
		List<Part> parts = new ArrayList<>(maps(scale));
		parts.addAll(keys());
		parts.addAll(couplings());
		parts.addAll(new HoleSections(typesetter, sheet, width).parts());
		sheet.tables().stream().filter(table -> !table.rows().isEmpty())
				.forEach(table -> parts.addAll(new SheetTable(typesetter, table.heads(), table.widths())
						.parts(table.title(), table.rows())));
		parts.addAll(new FingeringChart(typesetter, sheet, width).parts());
		return series(scale).pages(sheet.title(), parts, false);
	}

	private PageSeries series(DrawingScale scale) {
		List<PageFact> facts = new ArrayList<>(sheet.head().facts());
		facts.add(new PageFact("Drawing scale", scale.toString()));
		HeadText head = new HeadText(sheet.head().heading(), sheet.head().right(), sheet.head().subline(), facts);
		return new PageSeries(paper, new PageHead(head, typesetter, width), this::foot);
	}

	private DrawingScale scale() {
		double longest = Stream.concat(sheet.keys().stream().flatMap(key -> key.position().stream()),
				sheet.fingerHoles().stream().map(SheetFingerHole::position)).mapToDouble(Millimetres::value).max().orElse(1);
		return DrawingScale.fitting(longest, series(new DrawingScale(1)).firstBodyHeight() - AROUND_MAP);
	}

	/** The joints side by side, or below one another where they are too wide for that. */
	private List<Part> maps(DrawingScale scale) {
		List<JointDrawing> joints = joints().stream().map(joint -> new JointDrawing(typesetter, sheet, joint, scale))
				.filter(joint -> !joint.isEmpty()).toList();
		List<Bounds> sizes = joints.stream().map(JointDrawing::size)
				.map(size -> new Bounds(0, 0, Math.min(width, size.width()), size.height())).toList();
		List<Part> parts = new ArrayList<>();
		int next = 0;
		for (List<Bounds> shelf : Shelves.of(sizes, width, GAP)) {
			List<Element> elements = new ArrayList<>();
			for (Bounds place : shelf) {
				elements.addAll(joints.get(next++).draw(place.left()));
			}
			parts.add(new FixedPart(shelf.stream().mapToDouble(Bounds::height).max().orElseThrow(), elements));
		}
		return parts;
	}

	/** Those of the system; without any, all keys are on one tube. */
	private List<SheetJoint> joints() {
		return sheet.joints().isEmpty() ? List.of(new SheetJoint("", Optional.empty(), Optional.empty(), List.of())) : sheet.joints();
	}

	private List<Part> keys() {
		SheetTable table = new SheetTable(typesetter,
				List.of("no.", "key", "name", "at rest", "touch", "hole", "rim", "chim.", "made", "cup", "deep", "style", "hinge",
						"arm", "joint", "position", "around"),
				List.of(7.0, 22.0, 16.0, 10.0, 16.0, 9.0, 7.0, 9.0, 12.0, 9.0, 9.0, 14.0, 9.0, 8.0, 12.0, 12.0, 9.0));
		return table.parts("Keys, tone holes and cups, in mm",
				IntStream.range(0, sheet.keys().size()).mapToObj(this::row).toList());
	}

	private List<String> row(int index) {
		SheetKey key = sheet.keys().get(index);
		return List.of(String.valueOf(index + 1), key.label(), key.name(), key.closedAtRest() ? "closed" : "open",
				key.touch(), Millimetres.of(key.hole()), Millimetres.of(key.rim()), Millimetres.of(key.chimney()),
				key.make(), Millimetres.of(key.cup()), Millimetres.of(key.depth()), key.cupStyle(), key.hinge(),
				Millimetres.of(key.arm()), key.joint(), key.position().map((Length place) -> Millimetres.of(place)).orElse("not said"),
				key.around() == 0 ? "" : Math.round(key.around()) + "°");
	}

	private List<Part> couplings() {
		SheetTable table = new SheetTable(typesetter, List.of("no.", "key", "", "key", "through"),
				List.of(8.0, 40.0, 14.0, 40.0, 80.0));
		return table.parts("Couplings", IntStream.range(0, sheet.couplings().size()).mapToObj(index -> {
			SheetCoupling coupling = sheet.couplings().get(index);
			return List.of(String.valueOf(index + 1), named(coupling.driver()), coupling.effect(),
					named(coupling.driven()),
					coupling.adjuster());
		}).toList());
	}

	private String named(int key) {
		return (key + 1) + " " + sheet.keys().get(key).label();
	}

	private Part foot(int page, int pages) {
		double left = Ruler.LENGTH + 12;
		Column column = new Column(typesetter, left, 1.2, width - left);
		column.paragraph("Positions are those of the hole's centre from the upper end of its joint. Each joint is drawn from the "
				+ "side, with the distances from hole to hole, and unrolled: positions, angles around the bore, cups, dashed holes "
				+ "and rods between their posts are to scale. Thick: closed at rest. An arrow runs from a key to "
				+ "one that it moves, with the number of the coupling. 12 o'clock looks at: " + sheet.twelveLooksAt()
				+ ". Print at 100 %: the scale on the left must be 50 mm long.", Face.CONDENSED, NOTE);
		List<Element> elements = new ArrayList<>(column.elements());
		elements.addAll(Ruler.draw(1, 3));
		return FootRule.around(elements, Math.max(column.y(), 3 + Ruler.HEIGHT), width, page, pages);
	}
}
