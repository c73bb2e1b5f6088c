package padwright.language.messages;

import java.util.Optional;

import org.antlr.runtime.MismatchedTokenException;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenStream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.SyntaxErrorMessageProvider;

import com.google.inject.Singleton;

import padwright.workup.checks.IssueCodes;

/** Tells of text that cannot be read in words of the trade instead of the parser's. */
@Singleton
public class SyntaxMessages extends SyntaxErrorMessageProvider {

	private static final int LONGEST_QUOTE = 30;

	

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
		String found = problem == null ? Messages.of("syntax.this") : quoted(problem.token);
		String wrong = expected(context, problem).map(expected -> Messages.of("syntax.expected", found, expected))
				.orElseGet(() -> Messages.of("syntax.misplaced", found));
		return new SyntaxErrorMessage(wrong + " " + order(context.getCurrentContext()), IssueCodes.SYNTAX);
	}

	private static Optional<String> explained(RecognitionException problem) {
		String word = String.valueOf(problem.token.getText()).strip();
		String before = problem.input instanceof TokenStream tokens && tokens.LT(-1) != null ? tokens.LT(-1).getText() : "";
		return Wording.ofFormer(word).map(now -> Messages.of("syntax.former", word, now))
				.or(() -> Wording.asName(before, word).map(name -> Messages.of("syntax.asName", word, name)));
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
		return new SyntaxErrorMessage(context.getDefaultMessage() + ".", IssueCodes.SYNTAX);
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
		String[] tokens = context.getTokenNames();
		return problem instanceof MismatchedTokenException mismatch && mismatch.expecting >= 0
				&& mismatch.expecting < tokens.length ? Optional.of(word(tokens[mismatch.expecting]))
						: Optional.empty();
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
