package padwright.paper.report;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;

/** Lays a report out: its leading sentences, then table after table with the notes below each. */
public final class ReportPages {

	private static final double TEXT = 3;
	private static final double HEADING = 4;
	private static final double ROW = 4.8;
	private static final double GAP = 3;
	private static final double RULE = 0.1;
	private static final double HEAD_RULE = 0.4;

	private final Report report;
	private final PaperSize paper;
	private final double width;
	private final FontMetrics metrics = new DejaVuMetrics();
	private final Typesetter typesetter = new Typesetter(metrics);

	public ReportPages(Report report, PaperSize paper) {
		this.report = report;
		this.paper = paper;
		this.width = PageSeries.width(paper);
	}

	/** At least one page. */
	public List<Scene> pages() {
		List<Part> parts = new ArrayList<>();
		report.leads().forEach(lead -> parts.add(paragraph(lead, Face.REGULAR, TEXT)));
		report.tables().forEach(table -> add(table, parts));
		PageHead head = new PageHead(new HeadText(report.title(), "", "", List.of()), typesetter, width);
		return new PageSeries(paper, head, (page, pages) -> FootRule.around(List.of(), 0, width, page, pages))
				.pages(report.title(), parts, false);
	}

	private void add(ReportTable table, List<Part> parts) {
		parts.add(new FixedPart(GAP, List.of()));
		if (!table.title().isBlank()) {
			parts.add(paragraph(table.title().strip(), Face.BOLD, HEADING));
		}
		if (!table.rows().isEmpty()) {
			double[] widths = widths(table);
			parts.add(row(table, table.columns().stream().map(ReportTable.Column::heading).toList(), widths, true));
			table.rows().forEach(row -> parts.add(row(table, row.cells(), widths, false)));
		}
		table.notes().forEach(note -> parts.add(paragraph(note.strip(), Face.REGULAR, TEXT)));
	}

	private Part paragraph(String text, Face face, double size) {
		Column column = new Column(typesetter, 0, 0, width);
		column.paragraph(text, face, size);
		return new FixedPart(column.y() + 1, column.elements());
	}

	/** As wide as the widest cell of each column, all made narrower alike where they are wider than the paper. */
	private double[] widths(ReportTable table) {
		double[] widths = new double[table.columns().size()];
		for (int column = 0; column < widths.length; column++) {
			int index = column;
			widths[column] = GAP + Math.max(wide(table.columns().get(index).heading(), Face.CONDENSED_BOLD),
					table.rows().stream().mapToDouble(row -> wide(row.cells().get(index), Face.CONDENSED)).max().orElse(0));
		}
		double sum = 0;
		for (double each : widths) {
			sum += each;
		}
		for (int column = 0; column < widths.length; column++) {
			widths[column] *= Math.min(1, width / sum);
		}
		return widths;
	}

	private double wide(String text, Face face) {
		return metrics.width(text.strip(), face, TEXT);
	}

	private Part row(ReportTable table, List<String> cells, double[] widths, boolean head) {
		Face face = head ? Face.CONDENSED_BOLD : Face.CONDENSED;
		double baseline = ROW * 0.7;
		List<Element> elements = new ArrayList<>();
		double left = 0;
		for (int column = 0; column < widths.length; column++) {
			String cell = cells.get(column).strip();
			boolean figure = table.columns().get(column).figure();
			double room = widths[column] - GAP;
			if (!cell.isEmpty()) {
				elements.add(typesetter.line(cell, figure ? left + room : left, baseline, face, TEXT, room)
						.anchored(figure ? Anchor.END : Anchor.START));
			}
			left += widths[column];
		}
		elements.add(new Drawn(new Line(0, ROW, width, ROW), Style.stroked(Ink.grey(90), head ? HEAD_RULE : RULE)));
		return new FixedPart(ROW, elements);
	}
}
