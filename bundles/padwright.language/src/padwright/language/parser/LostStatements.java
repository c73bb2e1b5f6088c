package padwright.language.parser;

import java.util.Optional;

import org.eclipse.xtext.TerminalRule;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.IParseResult;

/** Finds where the generated parser has skipped statements that could be read. */
final class LostStatements {

	private static final String BLOCK_START = "{";
	private static final String BLOCK_END = "}";

	private final String text;
	private String message;
	private int start;
	private int end;
	private int nextStatement;
	private boolean skipping;
	/** A passage behind which a block was ended: maybe a wider one than was meant, so that the rest stands outside. */
	private Passage beforeEnd;

	private LostStatements(String text) {
		this.text = text;
	}

	/** The first skipped passage that is followed by a skipped statement, without that statement. */
	static Optional<Passage> first(IParseResult result, String text) {
		LostStatements lost = new LostStatements(text);
		for (ILeafNode leaf : result.getRootNode().getLeafNodes()) {
			if (!leaf.isHidden() && lost.isLost(leaf)) {
				return Optional.of(lost.passage());
			}
			if (lost.beforeEnd != null && lost.skipping && LineStarts.isAt(lost.start, text)) {
				return Optional.of(lost.beforeEnd);
			}
		}
		return Optional.empty();
	}

	private boolean isLost(ILeafNode leaf) {
		if (!isSkipped(leaf)) {
			beforeEnd = skipping && leaf.getText().equals(BLOCK_END) ? passage() : beforeEnd;
			skipping = false;
		} else if (!skipping) {
			begin(leaf);
		} else if (leaf.getOffset() >= nextStatement || isEndOfHead(leaf)) {
			return true;
		} else {
			end = leaf.getEndOffset();
		}
		return false;
	}

	/** Whether a block begins here whose head could not be read to its end. */
	private boolean isEndOfHead(ILeafNode leaf) {
		return leaf.getText().equals(BLOCK_START) && LineStarts.isInHead(start, text);
	}

	private Passage passage() {
		return new Passage(start, end, message);
	}

	private void begin(ILeafNode leaf) {
		SyntaxErrorMessage error = leaf.getSyntaxErrorMessage();
		message = error == null ? null : error.getMessage();
		start = leaf.getOffset();
		end = leaf.getEndOffset();
		nextStatement = LineStarts.after(start, text);
		skipping = true;
	}

	/** What the grammar has a place for is a call of a rule or a keyword of the grammar. */
	private static boolean isSkipped(ILeafNode leaf) {
		return leaf.getGrammarElement() == null || leaf.getGrammarElement() instanceof TerminalRule;
	}
}
