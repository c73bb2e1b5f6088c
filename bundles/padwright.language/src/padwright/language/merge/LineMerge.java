package padwright.language.merge;

import org.eclipse.compare.rangedifferencer.RangeDifference;
import org.eclipse.compare.rangedifferencer.RangeDifferencer;

/** Merges by lines what cannot be read as a document. */
final class LineMerge {

	private LineMerge() {
	}

	static MergeResult merge(String base, String ours, String theirs, String lineEnd) {
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
		return new MergeResult(merged.toString(), conflicts, true);
	}
}
