package padwright.language.merge;

import java.util.Arrays;
import java.util.List;

import org.eclipse.compare.rangedifferencer.IRangeComparator;

/** The lines of a text, each with its end. */
record Lines(List<String> lines) implements IRangeComparator {

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
