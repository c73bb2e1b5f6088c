package padwright.language.messages;

import java.util.Map;
import java.util.Optional;

import org.antlr.runtime.MismatchedTokenException;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.SyntaxErrorMessageProvider;

import com.google.inject.Singleton;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.IssueCodes;

/** Tells of text that cannot be read in words of the trade instead of the parser's. */
@Singleton
public class SyntaxMessages extends SyntaxErrorMessageProvider {

	private static final int LONGEST_QUOTE = 30;

	private static final Map<String, String> TOKENS = Map.of(
			"RULE_ID", "a name", "RULE_NUMBER", "a number", "RULE_STRING", "a text in \"quotation marks\"",
			"RULE_DAY", "a day such as 2026-03-01", "RULE_FROM_TO", "a range such as 13..16");

	private static final Map<EClass, String> ORDER = Map.ofEntries(
			Map.entry(KeySystemPackage.Literals.KEY,
					"A key is written: key Name \"label\" open|closed by Touch closes Keys hole … cup … deep … "
							+ "hinge … on … at …"),
			Map.entry(KeySystemPackage.Literals.KEY_CHANGE,
					"A change is written: change Key open|closed by Touch closes Keys hole … cup … deep …"),
			Map.entry(KeySystemPackage.Literals.KEY_SYSTEM,
					"A system holds clock, key, change, remove and note lines"),
			Map.entry(KeySystemPackage.Literals.FINGERING, "A fingering is written: note D4 : T L1 L2 L3 R1 R2 R3"),
			Map.entry(StockPackage.Literals.STOCK,
					"A stock holds bench, material, pad, stabiliser, film, feeler, adhesive and rule lines"),
			Map.entry(StockPackage.Literals.PAD,
					"A pad is written: pad Name { kind … base … face … skin … thick … +- … sinks … diameters … "
							+ "stiffness … needs stabiliser price … }"),
			Map.entry(StockPackage.Literals.MATERIAL,
					"A material is written: material Name { expands … ppm/K swells … %/%RH lasts … years animal "
							+ "hazard … source … }"),
			Map.entry(StockPackage.Literals.RULE,
					"A rule is written: rule \"text\" info|warn|error when shim.material is paper"),
			Map.entry(PlanPackage.Literals.PLAN,
					"A plan holds, in this order: date, seat, bed, player, fit, read, key rows, regulate lines"),
			Map.entry(PlanPackage.Literals.KEY_SERVICE,
					"A row is written: key Name found … fit … empty … stack … felt … shim … remark …"),
			Map.entry(PlanPackage.Literals.ROUND,
					"A round is written: felt . 0.5 . 1 shim 0.5 from 2 to 4, 1 from 8 to 10"),
			Map.entry(PlanPackage.Literals.PIECE, "A piece is written: 0.5 from 2 to 4"));

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
		RecognitionException problem = context.getRecognitionException();
		if (problem == null && context.getDefaultMessage() != null) {
			return new SyntaxErrorMessage(context.getDefaultMessage(), IssueCodes.SYNTAX);
		}
		String found = problem == null ? "This" : quoted(problem.token);
		String expected = problem instanceof MismatchedTokenException mismatch
				? expected(context, mismatch.expecting) : "";
		String message = found + " cannot stand here" + expected + "." + order(context.getCurrentContext());
		return new SyntaxErrorMessage(message, IssueCodes.SYNTAX);
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
		return new SyntaxErrorMessage(context.getDefaultMessage() + ".", IssueCodes.SYNTAX);
	}

	private static String quoted(Token token) {
		if (token == null || token.getType() == Token.EOF || token.getText() == null) {
			return "The end of the file";
		}
		String text = token.getText().strip();
		return "\"" + (text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "…" : text) + "\"";
	}

	private static String expected(IParserErrorContext context, int type) {
		if (type < 0 || type >= context.getTokenNames().length) {
			return "";
		}
		String name = context.getTokenNames()[type];
		return ": expected " + TOKENS.getOrDefault(name, name);
	}

	/** How the innermost element around the error is written. */
	private static String order(EObject element) {
		for (EObject around = element; around != null; around = around.eContainer()) {
			Optional<String> order = Optional.ofNullable(ORDER.get(around.eClass()));
			if (order.isPresent()) {
				return " " + order.get() + ".";
			}
		}
		return " A file holds system, stock or plan blocks.";
	}
}
