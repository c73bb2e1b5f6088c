package padwright.language.merge;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.compare.rangedifferencer.RangeDifference;
import org.eclipse.compare.rangedifferencer.RangeDifferencer;

import padwright.language.files.LineEnd;

/** The lines in which two texts differ. */
public final class ChangedLines {

	private static final String TAKEN_AWAY = "-";
	private static final String ADDED = "+";

	private ChangedLines() {
	}

	/** The changed lines in their order, old ones behind a -, new ones behind a +; how lines end does not count. */
	public static List<String> of(String old, String current) {
		Lines before = Lines.of(LineEnd.LF.in(old));
		Lines after = Lines.of(LineEnd.LF.in(current));
		List<String> changes = new ArrayList<>();
		for (RangeDifference range : RangeDifferencer.findDifferences(before, after)) {
			before.lines().subList(range.leftStart(), range.leftEnd())
					.forEach(line -> changes.add(TAKEN_AWAY + plain(line)));
			after.lines().subList(range.rightStart(), range.rightEnd())
					.forEach(line -> changes.add(ADDED + plain(line)));
		}
		return changes;
	}

	private static String plain(String line) {
		return line.endsWith("\n") ? line.substring(0, line.length() - 1) : line;
	}
}
