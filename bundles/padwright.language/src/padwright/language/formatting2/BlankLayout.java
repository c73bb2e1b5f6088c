package padwright.language.formatting2;

import java.util.List;
import java.util.Objects;

import org.eclipse.xtext.formatting2.IHiddenRegionFormatting;
import org.eclipse.xtext.formatting2.IMerger;
import org.eclipse.xtext.formatting2.ITextReplacer;
import org.eclipse.xtext.formatting2.ITextReplacerContext;
import org.eclipse.xtext.formatting2.regionaccess.IHiddenRegion;
import org.eclipse.xtext.formatting2.regionaccess.ITextSegment;

/**
 * Lays out what stands between two words: blanks, line ends and remarks. A remark behind a word stays on its line, any
 * other on a line of its own, and the word behind a remark begins a line, since a remark goes on to the end of its own.
 */
final class BlankLayout implements ITextReplacer {

	private static final String BLANK = "[\\s\\u00A0\\uFEFF]+";
	private static final int MOST_LINE_ENDS = 2;

	private final IHiddenRegion region;
	private final IHiddenRegionFormatting wanted;

	BlankLayout(IHiddenRegion region, IHiddenRegionFormatting wanted) {
		this.region = region;
		this.wanted = wanted;
	}

	/** The layout that all of several for one region want together; null if they are of other kinds. */
	static ITextReplacer merged(List<? extends ITextReplacer> layouts, IMerger<IHiddenRegionFormatting> merger) {
		List<BlankLayout> blanks = layouts.stream().filter(BlankLayout.class::isInstance).map(BlankLayout.class::cast)
				.toList();
		if (blanks.size() < layouts.size()) {
			return null;
		}
		List<IHiddenRegionFormatting> wanted = blanks.stream().map(layout -> layout.wanted).toList();
		return new BlankLayout(blanks.get(0).region, merger.merge(wanted));
	}

	@Override
	public ITextSegment getRegion() {
		return region;
	}

	@Override
	public ITextReplacerContext createReplacements(ITextReplacerContext context) {
		int before = context.getIndentation();
		int change = number(wanted.getIndentationIncrease()) - number(wanted.getIndentationDecrease());
		int after = Math.max(0, before + change);
		String laidOut = isLast() ? ending(context, before) : laidOut(context, before, after);
		context.addReplacement(region.replaceWith(laidOut));
		return context.withIndentation(after);
	}

	private static int number(Integer known) {
		return known == null ? 0 : known;
	}

	private boolean isFirst() {
		return region.getPreviousSemanticRegion() == null;
	}

	private boolean isLast() {
		return region.getNextSemanticRegion() == null;
	}

	private String laidOut(ITextReplacerContext context, int before, int after) {
		StringBuilder text = new StringBuilder();
		int ends = addRemarks(text, context, Math.max(before, after));
		int wantedEnds = text.isEmpty() ? isFirst() ? 0 : lineEnds(ends) : remarkEnds(ends, text);
		if (wantedEnds == 0) {
			return Objects.requireNonNullElse(isFirst() ? "" : wanted.getSpace(), "");
		}
		boolean goesOn = wanted.getNewLineMin() == null && !isFirst();
		String indentation = context.getIndentationString(goesOn ? after + 1 : after);
		return text.append(context.getNewLinesString(wantedEnds)).append(indentation).toString();
	}

	/** Adds the remarks without their line ends; how many line ends follow the last. */
	private int addRemarks(StringBuilder text, ITextReplacerContext context, int indentation) {
		int ends = 0;
		for (ITextSegment part : region.getAlternatingMergedSpaceAndComments()) {
			String remark = part.getText().strip().replaceAll("^" + BLANK + "|" + BLANK + "$", "");
			if (remark.isEmpty()) {
				ends += count(part.getText());
			} else {
				addRemark(remark, ends, text, context, indentation);
				ends = count(part.getText());
			}
		}
		return ends;
	}

	private void addRemark(String remark, int ends, StringBuilder text, ITextReplacerContext context,
			int indentation) {
		if (text.isEmpty() && isFirst()) {
			text.append(remark);
		} else if (text.isEmpty() && ends == 0) {
			text.append(' ').append(remark);
		} else {
			int wantedEnds = text.isEmpty() ? lineEnds(ends) : remarkEnds(ends, text);
			text.append(context.getNewLinesString(Math.max(1, wantedEnds)))
					.append(context.getIndentationString(indentation)).append(remark);
		}
	}

	/** The line ends that the grammar's layout wants at the first break. */
	private int lineEnds(int given) {
		int least = number(wanted.getNewLineMin());
		int most = Math.max(least, number(wanted.getNewLineMax()));
		return Math.max(least, Math.min(most, given));
	}

	/** At most one empty line behind a remark; a remark behind a word does not eat the empty line that is due. */
	private int remarkEnds(int given, StringBuilder text) {
		int least = isBehindWord(text) ? Math.max(1, number(wanted.getNewLineMin())) : 1;
		int most = wanted.getNewLineMin() == null && !isFirst() ? 1 : MOST_LINE_ENDS;
		return Math.max(least, Math.min(most, given));
	}

	/** Whether all remarks so far are one that stands behind a word. */
	private boolean isBehindWord(StringBuilder text) {
		return !isFirst() && text.indexOf("\n") < 0;
	}

	private String ending(ITextReplacerContext context, int indentation) {
		StringBuilder text = new StringBuilder();
		addRemarks(text, context, indentation);
		return text.isEmpty() && isFirst() ? "" : text.append(context.getNewLinesString(1)).toString();
	}

	private static int count(String text) {
		return (int) text.replace("\r\n", "\n").chars().filter(letter -> letter == '\n' || letter == '\r').count();
	}
}
