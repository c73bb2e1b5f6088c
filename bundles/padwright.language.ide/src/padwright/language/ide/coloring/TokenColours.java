package padwright.language.ide.coloring;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.SemanticTokenModifiers;
import org.eclipse.lsp4j.SemanticTokenTypes;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;
import org.eclipse.xtext.ide.editor.syntaxcoloring.IHighlightedPositionAcceptor;
import org.eclipse.xtext.ide.editor.syntaxcoloring.ISemanticHighlightingCalculator;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.service.OperationCanceledManager;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Inject;

import padwright.engine.length.LengthUnit;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** Which kind of token each word of a document is, in the protocol's terms. */
public final class TokenColours implements ISemanticHighlightingCalculator {

	private static final Map<EClass, String> KINDS = Map.of(
			KeySystemPackage.Literals.KEY_SYSTEM, SemanticTokenTypes.Class,
			KeySystemPackage.Literals.KEY, SemanticTokenTypes.Variable,
			StockPackage.Literals.STOCK, SemanticTokenTypes.Namespace,
			StockPackage.Literals.MATERIAL, SemanticTokenTypes.Parameter,
			PlanPackage.Literals.PLAN, SemanticTokenTypes.Namespace);
	private static final Map<String, String> TERMINALS = Map.of("NUMBER", SemanticTokenTypes.Number,
			"FROM_TO", SemanticTokenTypes.Number, "DAY", SemanticTokenTypes.Number,
			"STRING", SemanticTokenTypes.String, "SL_COMMENT", SemanticTokenTypes.Comment);
	private static final Set<String> NAMES = Set.of("ID", "Name", "JointName", "MaterialName", "PropertyWord", "ValueName");
	/** A word in a name in a qualified name. */
	private static final int DEEPEST_NAME = 3;
	private static final Set<String> UNITS = Stream.concat(
			Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol),
			Stream.of("ppm/K", "%/%RH", "%RH", "°C", "degC", "years", "grams", "Hz", "semitones", "cents", "%"))
			.collect(Collectors.toUnmodifiableSet());

	@Inject
	private OperationCanceledManager cancellation;

	@Override
	public void provideHighlightingFor(XtextResource document, IHighlightedPositionAcceptor acceptor,
			CancelIndicator cancelled) {
		for (ILeafNode leaf : document.getParseResult().getRootNode().getLeafNodes()) {
			cancellation.checkCanceled(cancelled);
			int length = leaf.getText().stripTrailing().length();
			List<String> styles = length == 0 ? List.of() : styles(leaf);
			if (!styles.isEmpty()) {
				acceptor.addPosition(leaf.getOffset(), length, styles.toArray(String[]::new));
			}
		}
	}

	private static List<String> styles(ILeafNode leaf) {
		EObject whole = wholeName(leaf);
		if (whole instanceof CrossReference reference) {
			return List.of(kind((EClass) reference.getType().getClassifier()));
		}
		if (whole instanceof RuleCall) {
			return name(leaf.getParent().getSemanticElement());
		}
		EObject token = leaf.getGrammarElement();
		if (token == null) {
			return List.of();
		}
		if (token instanceof EnumLiteralDeclaration || token.eContainer() instanceof EnumLiteralDeclaration) {
			return List.of(SemanticTokenTypes.EnumMember);
		}
		return token instanceof Keyword keyword ? List.of(keyword(keyword.getValue())) : terminal(token);
	}

	/** The reference or rule that a name belongs to, even where the name is one of several tokens; or null. */
	private static EObject wholeName(ILeafNode leaf) {
		EObject name = null;
		INode node = leaf;
		for (int depth = 0; depth < DEEPEST_NAME && node != null; depth++) {
			EObject grammar = node.getGrammarElement();
			if (grammar instanceof CrossReference) {
				return grammar;
			}
			if (grammar instanceof RuleCall call && NAMES.contains(call.getRule().getName())) {
				name = grammar;
			}
			node = node.getParent();
		}
		return name;
	}

	private static List<String> name(EObject element) {
		return element instanceof Titled
				? List.of(kind(element.eClass()), SemanticTokenModifiers.Declaration)
				: List.of(SemanticTokenTypes.Property);
	}

	/** Articles of a stock are types. */
	private static String kind(EClass type) {
		return KINDS.getOrDefault(type, SemanticTokenTypes.Type);
	}

	private static String keyword(String keyword) {
		if (UNITS.contains(keyword)) {
			return SemanticTokenTypes.Modifier;
		}
		return Character.isLetter(keyword.charAt(0)) ? SemanticTokenTypes.Keyword : SemanticTokenTypes.Operator;
	}

	private static List<String> terminal(EObject token) {
		TerminalRule rule = token instanceof RuleCall call && call.getRule() instanceof TerminalRule called ? called
				: token instanceof TerminalRule own ? own : null;
		String kind = rule == null ? null : TERMINALS.get(rule.getName());
		return kind == null ? List.of() : List.of(kind);
	}
}
