package padwright.language.parser;

import java.util.Optional;

import org.antlr.runtime.MismatchedTokenException;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenStream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.SyntaxErrorMessageProvider;

import com.google.inject.Singleton;

import padwright.language.messages.Messages;
import padwright.language.messages.Wording;
import padwright.workup.checks.IssueCodes;
import padwright.workup.words.FormerWords;

/** Tells of text that cannot be read in words of the trade instead of the parser's. */
@Singleton
public class SyntaxMessages extends SyntaxErrorMessageProvider {

	/** Carried by a finding on a statement before the line that it was met at. */
	public static final String UNFINISHED = "unfinished";
	/** Carried by a finding on a number that is no hour. */
	public static final String HOUR = "hour";

	private static final int LONGEST_QUOTE = 30;
	private static final String HOUR_RULE = "Hour";
	private static final String BLOCK_END = "'}'";

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
		RecognitionException problem = context.getRecognitionException();
		if (problem == null && context.getDefaultMessage() != null) {
			return new SyntaxErrorMessage(context.getDefaultMessage(), IssueCodes.SYNTAX);
		}
		Optional<String> explained = problem == null || problem.token == null ? Optional.empty() : explained(problem);
		if (explained.isPresent()) {
			return new SyntaxErrorMessage(explained.get(), IssueCodes.SYNTAX);
		}
		if (isUnfinished(context, problem)) {
			return new SyntaxErrorMessage(expected(context, problem)
					.map(expected -> Messages.of("syntax.unfinishedBefore", expected))
					.orElseGet(() -> Messages.of("syntax.unfinished")) + " " + order(context.getCurrentContext()),
					IssueCodes.SYNTAX, new String[] { UNFINISHED });
		}
		String found = problem == null ? Messages.of("syntax.this") : quoted(problem.token);
		String wrong = expected(context, problem).map(expected -> Messages.of("syntax.expected", found, expected))
				.orElseGet(() -> Messages.of("syntax.misplaced", found));
		return new SyntaxErrorMessage(wrong + " " + order(context.getCurrentContext()), IssueCodes.SYNTAX);
	}

	private static Optional<String> explained(RecognitionException problem) {
		String word = String.valueOf(problem.token.getText()).strip();
		String before = problem.input instanceof TokenStream tokens && tokens.LT(-1) != null ? tokens.LT(-1).getText() : "";
		return FormerWords.now(word).map(now -> Messages.of("syntax.former", word, now))
				.or(() -> Wording.asName(before, word).map(name -> Messages.of("syntax.asName", word, name)));
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
		return new SyntaxErrorMessage(context.getDefaultMessage() + ".", IssueCodes.SYNTAX,
				isHour(context.getValueConverterException()) ? new String[] { HOUR } : null);
	}

	private static boolean isHour(ValueConverterException failed) {
		return failed != null && failed.getNode() != null && failed.getNode().getGrammarElement() instanceof RuleCall call
				&& call.getRule().getName().equals(HOUR_RULE);
	}

	/**
	 * Whether the next statement began before this one was at its end: then the one before is to be mended, not the one
	 * that could not be read on into.
	 */
	private static boolean isUnfinished(IParserErrorContext context, RecognitionException problem) {
		if (problem == null || problem.token == null || !(problem.input instanceof TokenStream tokens)) {
			return false;
		}
		Token before = tokens.LT(-1);
		return before != null && before.getLine() < problem.token.getLine()
				&& problem.token.getText() != null && LineStarts.isOne(problem.token.getText())
				&& expectedToken(context, problem).filter(BLOCK_END::equals).isEmpty();
	}

	private static String quoted(Token token) {
		if (token == null || token.getType() == Token.EOF || token.getText() == null) {
			return Messages.of("syntax.end");
		}
		String text = token.getText().strip();
		return Messages.of("syntax.quoted",
				text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "…" : text);
	}

	private static Optional<String> expected(IParserErrorContext context, RecognitionException problem) {
		return expectedToken(context, problem).map(SyntaxMessages::word);
	}

	private static Optional<String> expectedToken(IParserErrorContext context, RecognitionException problem) {
		String[] tokens = context.getTokenNames();
		return problem instanceof MismatchedTokenException mismatch && mismatch.expecting >= 0
				&& mismatch.expecting < tokens.length ? Optional.of(tokens[mismatch.expecting]) : Optional.empty();
	}

	/** A keyword stands for itself. */
	private static String word(String token) {
		return Messages.find("token." + token).orElse(token);
	}

	/** How the innermost element around the error is written. */
	private static String order(EObject element) {
		for (EObject around = element; around != null; around = around.eContainer()) {
			Optional<String> order = Messages.find("order." + around.eClass().getName());
			if (order.isPresent()) {
				return order.get();
			}
		}
		return Messages.of("order");
	}
}
