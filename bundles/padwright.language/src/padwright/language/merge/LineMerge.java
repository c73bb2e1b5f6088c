package padwright.language.merge;

import java.util.Arrays;
import java.util.List;

import org.eclipse.compare.rangedifferencer.IRangeComparator;
import org.eclipse.compare.rangedifferencer.RangeDifference;
import org.eclipse.compare.rangedifferencer.RangeDifferencer;

/** Merges by lines what cannot be read as a document. */
final class LineMerge {

	/** The lines of a text, each with its end. */
	private record Lines(List<String> lines) implements IRangeComparator {

		static Lines of(String text) {
			return new Lines(text.isEmpty() ? List.of() : Arrays.asList(text.split("(?<=\\n)")));
		}

		@Override
		public int getRangeCount() {
			return lines.size();
		}

		@Override
		public boolean rangesEqual(int line, IRangeComparator other, int otherLine) {
			return lines.get(line).equals(((Lines) other).lines.get(otherLine));
		}

		@Override
		public boolean skipRangeComparison(int length, int most, IRangeComparator other) {
			return false;
		}

		String text(int start, int end) {
			return String.join("", lines.subList(start, end));
		}
	}

	private LineMerge() {
	}

	static Merged merge(String base, String ours, String theirs, String lineEnd) {
		Lines first = Lines.of(ours);
		Lines second = Lines.of(theirs);
		StringBuilder merged = new StringBuilder();
		int conflicts = 0;
		for (RangeDifference range : RangeDifferencer.findRanges(Lines.of(base), first, second)) {
			String left = first.text(range.leftStart(), range.leftEnd());
			String right = second.text(range.rightStart(), range.rightEnd());
			if (range.kind() == RangeDifference.CONFLICT) {
				conflicts++;
				merged.append(ConflictMarks.write(new Sides(left, right), merged.toString(), lineEnd)).append(lineEnd);
			} else {
				merged.append(range.kind() == RangeDifference.RIGHT ? right : left);
			}
		}
		return new Merged(merged.toString(), conflicts, true);
	}
}
