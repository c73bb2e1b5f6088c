package padwright.paper.sheet;

import java.util.List;
import java.util.stream.IntStream;

import padwright.drawing.scene.Face;
import padwright.paper.page.Typesetter;

/** How wide the columns of a table are: as wide as what stands in them, the widest ones narrower where all do not fit. */
record ColumnWidths(Typesetter typesetter, double size, double padding) {

	/** Between two columns where there is room, mm. */
	private static final double MOST_ROOM = 5;

	/** @param heads and rows of the same columns */
	List<Double> of(List<String> heads, List<List<String>> rows, double room) {
		List<Double> natural = IntStream.range(0, heads.size()).mapToObj(column -> natural(column, heads, rows)).toList();
		double all = natural.stream().mapToDouble(Double::doubleValue).sum();
		if (all <= room) {
			double more = Math.min(MOST_ROOM, (room - all) / heads.size());
			return natural.stream().map(width -> width + more).toList();
		}
		double most = most(natural, room);
		return natural.stream().map(width -> Math.min(width, most)).toList();
	}

	private double natural(int column, List<String> heads, List<List<String>> rows) {
		return rows.stream().mapToDouble(row -> width(row.get(column), Face.CONDENSED))
				.reduce(width(heads.get(column), Face.CONDENSED_BOLD), Math::max);
	}

	private double width(String cell, Face face) {
		return typesetter.metrics().width(cell, face, size) + padding;
	}

	/** The width that none may be above, so that all together are as wide as the room. */
	private static double most(List<Double> natural, double room) {
		List<Double> rising = natural.stream().sorted().toList();
		double left = room;
		for (int index = 0; index < rising.size(); index++) {
			double share = left / (rising.size() - index);
			if (rising.get(index) > share) {
				return share;
			}
			left -= rising.get(index);
		}
		return room;
	}
}
