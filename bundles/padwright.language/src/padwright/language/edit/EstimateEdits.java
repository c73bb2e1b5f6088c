package padwright.language.edit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.Strings;

import padwright.engine.quote.Money;
import padwright.model.plan.Estimate;
import padwright.model.plan.Plan;
import padwright.workup.job.JobRecord;
import padwright.workup.money.EstimateDraft;
import padwright.workup.money.EstimateDraft.Item;
import padwright.workup.money.EstimateDraft.Option;

/** Writes a drafted estimate into the text of a plan. */
public final class EstimateEdits {

	private EstimateEdits() {
	}

	/** Whether a plan has an estimate already. */
	public static boolean isThere(Plan plan) {
		return JobRecord.of(plan).last(Estimate.class).isPresent();
	}

	/** Behind all that the plan's diary says, which is begun where there is none; nothing for a plan without its last brace. */
	public static List<TextEdit> of(Plan plan, EstimateDraft draft, LocalDate today) {
		String estimate = text(draft, today, "\t\t");
		return plan.getJob() == null
				? lastBrace(plan).map(brace -> new TextEdit(brace.getOffset(), 0, "\tjob {\n\t\t" + estimate + "\n\t}\n")).stream().toList()
				: lastBrace(plan.getJob()).map(brace -> new TextEdit(brace.getOffset(), 0, "\t" + estimate + "\n\t")).stream().toList();
	}

	/** As it stands in a diary, its first line without the indent of the others. */
	public static String text(EstimateDraft draft, LocalDate today, String indent) {
		return "estimate on " + today + " {\n" + draft.options().stream().map(option -> option(option, indent + "\t"))
				.collect(Collectors.joining()) + indent + "}";
	}

	private static String option(Option option, String indent) {
		return indent + "option " + option.name() + " " + quoted(option.label().words()) + " {\n" + option.items().stream()
				.map(item -> indent + "\t" + item(item) + "\n").collect(Collectors.joining()) + indent + "}\n";
	}

	private static String item(Item item) {
		return "item " + quoted(item.text().words()) + " " + Money.text(item.price()) + (item.count() == 1 ? "" : " times " + item.count());
	}

	private static String quoted(String text) {
		return "\"" + Strings.convertToJavaString(text, false) + "\"";
	}

	private static Optional<ILeafNode> lastBrace(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		return node == null ? Optional.empty() : StreamSupport.stream(node.getLeafNodes().spliterator(), false)
				.filter(leaf -> !leaf.isHidden()).reduce((earlier, later) -> later).filter(leaf -> leaf.getText().equals("}"));
	}
}
