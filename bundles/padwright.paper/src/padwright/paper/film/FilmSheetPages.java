package padwright.paper.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import padwright.drawing.clock.FilmHatch;
import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Ruler;
import padwright.paper.page.Shelves;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;
import padwright.workup.report.Figures;
import padwright.workup.words.LengthWords;

/** Lays a film cutting sheet out at full size: for each thickness its counts, then its discs on shelves. */
public final class FilmSheetPages {

	private static final double GAP = 4;
	private static final double HEADING = 4.6;
	private static final double TEXT = 3;
	private static final double NOTE = 2.5;

	private final FilmSheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public FilmSheetPages(FilmSheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		this.width = PageSeries.width(paper);
	}

	/** The pages; what is drawn must be printed without scaling. */
	public List<Scene> pages() {
		List<Part> parts = new ArrayList<>();
		sheet.groups().forEach(group -> parts.addAll(group(group)));
		if (parts.isEmpty()) {
			parts.add(new FixedPart(HEADING * 2, line(Messages.of(sheet.isOpen() ? "film.nothingYet" : "film.nothing"), HEADING).elements()));
		}
		PageSeries series = new PageSeries(paper, new PageHead(sheet.head(), typesetter, width), this::foot);
		return series.pages(sheet.title(), parts, false);
	}

	/** The heading comes with the first shelf, so that no page ends with it. */
	private List<Part> group(FilmGroup group) {
		List<FilmDisc> discs = FilmDisc.of(group.pieces());
		List<Part> parts = new ArrayList<>();
		Part heading = heading(group, discs);
		for (Part shelf : shelves(discs)) {
			parts.add(parts.isEmpty() ? joined(heading, shelf) : shelf);
		}
		return parts.isEmpty() ? List.of(heading) : parts;
	}

	private static Part joined(Part upper, Part lower) {
		List<Element> elements = new ArrayList<>(upper.draw(upper.height()));
		elements.add(Group.of(lower.draw(lower.height())).at(0, upper.height()));
		return new FixedPart(upper.height() + lower.height(), elements);
	}

	private Part heading(FilmGroup group, List<FilmDisc> discs) {
		Column column = new Column(typesetter, 0, 1.5, width);
		double side = HEADING * 0.75;
		column.add(new Drawn(new Rectangle(0, 1.5 + HEADING * 0.2, side, side),
				Style.of(FilmHatch.of(group.thickness()).fill(1), Stroke.of(Ink.BLACK, 0.25))));
		column.line(Messages.of("film.heading", LengthWords.withUnit(group.thickness()), group.film()), Face.BOLD, HEADING, HEADING * 1.2);
		column.paragraph(blanks(group), Face.CONDENSED_BOLD, TEXT);
		if (!group.fullShims().isEmpty()) {
			column.paragraph(Messages.of("film.fullShims",
					group.fullShims().stream().map(FullShims::label).collect(Collectors.joining(", "))), Face.CONDENSED, TEXT);
		}
		if (!discs.isEmpty()) {
			column.paragraph(nesting(group, discs), Face.CONDENSED, TEXT);
		}
		return new FixedPart(column.y() + 2, column.elements());
	}

	private static String blanks(FilmGroup group) {
		List<String> what = new ArrayList<>();
		if (group.fullCount() > 0) {
			what.add(counted("film.full", group.fullCount()));
		}
		if (!group.pieces().isEmpty()) {
			what.add(counted("film.partial", group.pieces().size()));
		}
		String all = String.join(", ", what);
		String blanks = counted("film.blank", group.blanks());
		return group.onHand().map(count -> Messages.of("film.taken", all, blanks, count))
				.orElseGet(() -> Messages.of("film.takenUncounted", all, blanks));
	}

	private static String nesting(FilmGroup group, List<FilmDisc> discs) {
		double used = discs.stream().mapToDouble(FilmDisc::usedArea).sum();
		double all = discs.stream().mapToDouble(disc -> disc.ring().discArea()).sum();
		return Messages.of("film.nesting", counted("film.disc", discs.size()),
				counted("film.blank", group.pieces().size()), Math.round(100 * (1 - used / all)));
	}

	/** @param thing the key of the words for {@code .one} and for {@code .more} */
	private static String counted(String thing, int count) {
		return Messages.of(thing + (count == 1 ? ".one" : ".more"), count);
	}

	private List<Part> shelves(List<FilmDisc> discs) {
		List<DiscCell> cells = discs.stream().map(disc -> new DiscCell(typesetter, disc))
				.sorted(Comparator.comparing(cell -> -cell.height())).toList();
		List<Bounds> sizes = cells.stream().map(cell -> new Bounds(0, 0, cell.width(), cell.height())).toList();
		List<Part> shelves = new ArrayList<>();
		int next = 0;
		for (List<Bounds> shelf : Shelves.of(sizes, width, GAP)) {
			List<Element> elements = new ArrayList<>();
			for (Bounds place : shelf) {
				elements.add(Group.of(cells.get(next++).draw()).at(place.left(), place.top()));
			}
			double height = shelf.stream().mapToDouble(Bounds::height).max().orElseThrow();
			shelves.add(new FixedPart(height + GAP, elements));
		}
		return shelves;
	}

	private Column line(String text, double size) {
		Column column = new Column(typesetter, 0, 2, width);
		column.line(text, Face.REGULAR, size, 0);
		return column;
	}

	private Part foot(int page, int pages) {
		double left = Ruler.LENGTH + 12;
		Column column = new Column(typesetter, left, 1.2, width - left);
		column.line(Messages.of("film.check"), Face.CONDENSED_BOLD, NOTE, 0);
		column.paragraph(Messages.of("film.ruler"), Face.CONDENSED, NOTE);
		column.line(Messages.of("film.assumed"), Face.CONDENSED_BOLD, NOTE, 0);
		column.paragraph(Messages.of("film.ring", Figures.number(RingSize.WIDTH, 1), Figures.number(RingSize.MOST_OF_RADIUS, 1)),
				Face.CONDENSED, NOTE);
		sheet.leftOut().forEach(text -> column.paragraph(text, Face.CONDENSED_BOLD, NOTE));
		sheet.cautions().forEach(text -> column.paragraph(text, Face.CONDENSED, NOTE));
		List<Element> elements = new ArrayList<>(column.elements());
		elements.addAll(Ruler.draw(1, 4));
		return FootRule.around(elements, column.y(), width, page, pages);
	}
}
