package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import padwright.paper.words.Messages;

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
		parts.addAll(cups());
		parts.addAll(couplings());
		parts.addAll(new HoleSections(typesetter, sheet, width).parts());
		sheet.tables().forEach(list -> parts.addAll(table(list)));
		parts.addAll(new FingeringChart(typesetter, sheet, width).parts());
		return series(scale).pages(sheet.title(), parts, false);
	}

	private PageSeries series(DrawingScale scale) {
		List<PageFact> facts = new ArrayList<>(sheet.head().facts());
		facts.add(new PageFact(Messages.of("sheet.scale"), scale.toString()));
		HeadText head = new HeadText(sheet.head().heading(), sheet.head().right(), sheet.head().subline(), facts);
		return new PageSeries(paper, new PageHead(head, typesetter, width), this::foot);
	}

	private DrawingScale scale() {
		double longest = Stream.of(sheet.keys().stream().flatMap(key -> key.position().stream()),
				sheet.fingerHoles().stream().map(SheetFingerHole::position),
				sheet.joints().stream().flatMap(joint -> joint.length().stream())).flatMap(places -> places)
				.mapToDouble(Millimetres::value).max().orElse(1);
		return DrawingScale.fitting(longest, series(new DrawingScale(1)).firstBodyHeight() - AROUND_MAP);
	}

	/** The joints side by side, or below one another where they are too wide for that. */
	private List<Part> maps(DrawingScale scale) {
		List<JointDrawing> inOrder = sheet.drawnJoints().stream()
				.map(joint -> new JointDrawing(typesetter, sheet, joint, scale))
				.filter(joint -> !joint.isEmpty()).toList();
		List<JointDrawing> bareLast = inOrder.stream().sorted(Comparator.comparing(JointDrawing::isBare)).toList();
		List<JointDrawing> joints = shelves(bareLast).size() < shelves(inOrder).size() || isBarePage(inOrder, scale)
				? bareLast : inOrder;
		List<Part> parts = new ArrayList<>();
		int next = 0;
		for (List<Bounds> shelf : shelves(joints)) {
			List<Element> elements = new ArrayList<>();
			for (Bounds place : shelf) {
				elements.addAll(joints.get(next++).draw(place.left()));
			}
			parts.add(new FixedPart(height(shelf), elements));
		}
		return parts;
	}

	/** Whether in this order the first page would show joints without holes alone. */
	private boolean isBarePage(List<JointDrawing> joints, DrawingScale scale) {
		List<List<Bounds>> shelves = shelves(joints);
		return shelves.size() > 1 && joints.subList(0, shelves.get(0).size()).stream().allMatch(JointDrawing::isBare)
				&& height(shelves.get(0)) + height(shelves.get(1)) > series(scale).firstBodyHeight();
	}

	private static double height(List<Bounds> shelf) {
		return shelf.stream().mapToDouble(Bounds::height).max().orElseThrow();
	}

	private List<List<Bounds>> shelves(List<JointDrawing> joints) {
		return Shelves.of(joints.stream().map(JointDrawing::size)
				.map(size -> new Bounds(0, 0, Math.min(width, size.width()), size.height())).toList(), width, GAP);
	}

	private List<Part> keys() {
		return table(new SheetList(Messages.of("sheet.keys"),
				heads("number", "key", "name", "atRest", "touch", "turnsWith", "hinge", "arm", "rise", "spring"),
				IntStream.range(0, sheet.keys().size()).mapToObj(this::keyRow).toList()));
	}

	private List<Part> cups() {
		return table(new SheetList(Messages.of("sheet.cups"),
				heads("number", "key", "joint", "position", "around", "hole", "rim", "chimney", "undercut", "made", "cup", "deep",
						"opening", "held"),
				IntStream.range(0, sheet.keys().size()).filter(key -> !sheet.keys().get(key).isLever())
						.mapToObj(this::cupRow).toList()));
	}

	private List<Part> table(SheetList list) {
		return new SheetTable(typesetter, list, width).parts();
	}

	private List<String> keyRow(int index) {
		SheetKey key = sheet.keys().get(index);
		return List.of(String.valueOf(index + 1), key.label(), key.name(),
				Messages.of(key.closedAtRest() ? "sheet.closed" : "sheet.open"), key.touch(), key.whole(), key.hinge(),
				Millimetres.of(key.arm()), Millimetres.of(key.rise()), key.spring());
	}

	private List<String> cupRow(int index) {
		SheetKey key = sheet.keys().get(index);
		return List.of(String.valueOf(index + 1), key.label(), key.joint(),
				key.position().map((Length place) -> Millimetres.of(place)).orElseGet(() -> Messages.of("sheet.notSaid")),
				key.position().isEmpty() ? "" : Math.round(key.around()) + "°", Millimetres.of(key.hole()),
				Millimetres.of(key.rim()), Millimetres.of(key.chimney()), Millimetres.of(key.undercut()), key.make(),
				Millimetres.of(key.cup()), Millimetres.of(key.depth()), opening(key), key.held());
	}

	private static String opening(SheetKey key) {
		return key.perforated() ? key.opening().map((Length wide) -> Millimetres.of(wide)).orElseGet(() -> Messages.of("sheet.yes")) : "";
	}

	private List<Part> couplings() {
		return table(new SheetList(Messages.of("sheet.couplings"), heads("number", "key", "does", "toKey", "through"),
				IntStream.range(0, sheet.couplings().size()).mapToObj(this::couplingRow).toList()));
	}

	private List<String> couplingRow(int index) {
		SheetCoupling coupling = sheet.couplings().get(index);
		return List.of(String.valueOf(index + 1), named(coupling.driver()), coupling.effect(), named(coupling.driven()),
				coupling.adjuster());
	}

	private static List<String> heads(String... keys) {
		return Stream.of(keys).map(key -> Messages.of("sheet." + key)).toList();
	}

	private String named(int key) {
		return (key + 1) + " " + sheet.keys().get(key).label();
	}

	private Part foot(int page, int pages) {
		double left = Ruler.LENGTH + 12;
		Column column = new Column(typesetter, left, 1.2, width - left);
		column.paragraph(Messages.of("sheet.howToRead", sheet.twelveLooksAt()), Face.CONDENSED, NOTE);
		List<Element> elements = new ArrayList<>(column.elements());
		elements.addAll(Ruler.draw(1, 3));
		return FootRule.around(elements, Math.max(column.y(), 3 + Ruler.HEIGHT), width, page, pages);
	}
}
