package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.junit.jupiter.api.Test;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.plan.Job;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;

/** Every clause that the grammar has words for is a field of a form, wherever an example says its element. */
class EveryClauseTest {

	/** What the examples do not say. */
	private static final String MORE = """
			unit mm
			system Base "b" { // one
				clock 12 at hinge
				joint body long 300 bore 19
				touch T
				hole H 5 by T at 30
				key A closes B through screw pitch 1 ratio 1 play 0.1 when B is not pressed
				key B
				rod R carries A, // one
					B pinned
			}
			system Other based on Base {
				change joint body long 310
				change touch T by L1
				change hole H 6
				change A closes nothing opens B
				change rod R from 10
				remove B
				remove rod R
				remove hole H
				remove touch T
				remove joint body
				remove note C4
				note D4 : T
			}
			stock S {
				levelling { feel 1 thou }
				material m { }
				kind k { sinks 1 }
				pad P { base m 1 thick 2 }
				backing b m 1
				film f m { 1 2 }
				feeler e m 1
				adhesive a { }
				rule "r" warn when pad.kind is felt and not (pad.layers > 3 or kind isnt k)
				prefer "p" 1 when material is m
				process p { stage look check "a", "b" }
				letterhead "l" on estimate says "x"
			}
			plan Q for Base with S {
				player { home 20 degC 50 %RH }
				inspect { tenon body tight by 0.1 }
				empty by stop
				key A empty 1 felt 1 shim 0.5 from 1 to 3 delivered 1
				regulate A > B : 1 light at driver
				job { estimate { option o { item "i" 1 } } photo "x.png" of A second look warranty for Old }
			}
			""";

	private static final Set<Class<?>> BLOCKS = Set.of(Document.class, KeySystem.class, Stock.class, Plan.class, Job.class);

	private final Set<String> controls = new TreeSet<>();

	@Test
	void everyClauseHasAControl() {
		Examples.documents(Examples.TEMPLATES)
				.forEach(file -> look(Examples.with(file, Examples.text(file)).document(Examples.name(file))));
		Document more = TestShop.of("more.plan", MORE).document("more.plan");
		look(more);
		Set<String> missing = new TreeSet<>();
		for (AbstractRule rule : GrammarUtil.allRules(GrammarUtil.getGrammar(rule(more.getSystems().get(0))))) {
			if (rule instanceof ParserRule && rule.getType().getClassifier() instanceof EClass kind && !isOfOneText(kind)
					&& kind != PlanPackage.Literals.DOCUMENT) {
				clauses(rule).forEach(clause -> missing.add(kind.getName() + "." + clause));
			}
		}
		assertTrue(missing.contains("Coupling.condition"));
		missing.removeAll(controls);
		assertEquals(Set.of(), missing);
	}

	/** The condition of a rule is a field as a whole. */
	private static boolean isOfOneText(EClass kind) {
		return StockPackage.Literals.EXPRESSION.isSuperTypeOf(kind) || StockPackage.Literals.VALUE.isSuperTypeOf(kind);
	}

	private void look(Document document) {
		document.eAllContents().forEachRemaining(element -> {
			if (!isOfOneText(element.eClass())) {
				Set<String> fields = ElementFields.of(element).stream().map(field -> ElementFields.clause(element, field))
						.collect(Collectors.toSet());
				clauses(rule(element)).stream()
						.filter(clause -> fields.contains(clause) || hasFormOfItsOwn(element, clause)
								|| isIdentity(element, clause))
						.forEach(clause -> controls.add(element.eClass().getName() + "." + clause));
			}
		});
	}

	private static AbstractRule rule(EObject element) {
		ICompositeNode node = ClauseEdits.node(element);
		assertNotNull(node, element.toString());
		return ElementFields.rule(element).orElseThrow();
	}

	private static Set<String> clauses(AbstractRule rule) {
		Set<String> clauses = new TreeSet<>();
		GrammarUtil.containedAssignments(rule).stream().map(Assignment::getFeature).forEach(clauses::add);
		return clauses;
	}

	private static boolean hasFormOfItsOwn(EObject element, String clause) {
		return element.eClass().getEStructuralFeature(clause) instanceof EReference reference && reference.isContainment()
				&& reference.isMany() && BLOCKS.stream().anyMatch(block -> block.isInstance(element));
	}

	/** A row is known by its key, a change by what it is of. */
	private static boolean isIdentity(EObject element, String clause) {
		return element.eContainmentFeature().isMany()
				&& element.eClass().getEStructuralFeature(clause) instanceof EReference reference && !reference.isContainment()
				&& FieldGrammar.firstFeature(rule(element)).filter(clause::equals).isPresent();
	}
}
