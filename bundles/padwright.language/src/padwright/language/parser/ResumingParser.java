package padwright.language.parser;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.antlr.runtime.ANTLRStringStream;
import org.antlr.runtime.CharStream;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.antlr.XtextTokenStream;

import com.google.inject.Singleton;

import padwright.language.merge.ConflictMarks;
import padwright.language.parser.antlr.PadwrightParser;

/**
 * Reads on after a mistake. The generated parser gives up a whole block at a word that cannot stand in it; this one
 * passes over the text from there to the next statement and reads again, so that the rest of the file is still checked.
 */
@Singleton
public class ResumingParser extends PadwrightParser {

	/** So often is a text read again at most, and so many characters in all. */
	private static final int MOST_READINGS = 50;
	private static final int MOST_CHARACTERS = 1 << 21;

	@Override
	protected IParseResult parse(String rule, CharStream in) {
		String text = in.size() == 0 ? "" : in.substring(0, in.size() - 1);
		List<Passage> passages = unreadable(text);
		IParseResult result = super.parse(rule, passages.isEmpty() ? in : new PassingOver(text, passages));
		int readings = Math.min(MOST_READINGS, MOST_CHARACTERS / Math.max(1, text.length()));
		for (int reading = 0; reading < readings && result.hasSyntaxErrors(); reading++) {
			Optional<Passage> lost = LostStatements.first(result, text);
			if (lost.isEmpty()) {
				return result;
			}
			passages.add(lost.get());
			passages.sort(Comparator.comparingInt(Passage::start));
			result = super.parse(rule, new PassingOver(text, passages));
		}
		return result;
	}

	/** What is passed over whatever stands around it. */
	private List<Passage> unreadable(String text) {
		List<Passage> passages = new ArrayList<>();
		if (text.contains(RuleLimits.KEYWORD)) {
			passages.addAll(RuleLimits.beyond(text, super.createLexer(new ANTLRStringStream(text))));
		}
		if (passages.isEmpty() && ConflictMarks.mayBeIn(text)) {
			passages.addAll(ConflictPassages.in(text));
		}
		return passages;
	}

	@Override
	protected TokenSource createLexer(CharStream text) {
		TokenSource all = super.createLexer(text);
		return text instanceof PassingOver passing ? new PassingTokens(all, passing) : all;
	}

	@Override
	protected XtextTokenStream createTokenStream(TokenSource source) {
		return new XtextTokenStream(source, getTokenDefProvider()) {
			@Override
			public String getLexerErrorMessage(Token invalid) {
				return source instanceof PassingTokens passing ? passing.message(invalid)
						: super.getLexerErrorMessage(invalid);
			}
		};
	}

	@Override
	protected boolean isReparseSupported() {
		return false;
	}
}
