package padwright.language.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.LengthText;
import padwright.model.plan.Fitting;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Player;
import padwright.model.stock.Climate;
import padwright.model.Lengths;

/**
 * The lines that a plan begins with, before its rows.
 *
 * @param unit of the document
 * @param lines as they are written, without the indent, in the order of the grammar
 */
public record PlanLines(LengthUnit unit, List<String> lines) {

	public PlanLines {
		lines = List.copyOf(lines);
	}

	/** The line about the gap that passes. */
	static String seat(Length tolerance) {
		return "seat within " + thou(tolerance);
	}

	private static String thou(Length length) {
		return LengthText.number(length, LengthUnit.THOU).map(number -> number + " thou")
				.orElseGet(() -> LengthText.number(length, LengthUnit.MILLIMETRE).orElseThrow() + " mm");
	}

	/**
	 * Those of another plan. What is fitted is left out where the new plan takes from another stock.
	 *
	 * @param stock of the new plan; empty for none
	 */
	public static PlanLines of(Plan template, String stock) {
		List<String> lines = new ArrayList<>();
		if (template.getTolerance() != null) {
			lines.add("seat within " + template.getTolerance());
		}
		if (template.getBed() != null) {
			lines.add("bed " + template.getBed() + unit(template.getBedUnit()));
		}
		if (template.getPlayer() != null) {
			lines.add(player(template.getPlayer()));
		}
		if (template.getFitting() != null && template.getStock() != null && stock.equals(template.getStock().getName())) {
			lines.add(fitting(template.getFitting()));
		}
		if (!template.getHours().isEmpty()) {
			lines.add("read at " + template.getHours().stream().map(Object::toString).collect(Collectors.joining(" "))
					+ (template.isGraded() ? " graded" : ""));
		}
		return new PlanLines(Lengths.documentUnit(template), lines);
	}

	private static String unit(LengthUnit unit) {
		return unit == null ? "" : " " + unit.symbol();
	}

	private static String player(Player player) {
		List<String> words = new ArrayList<>(List.of("player"));
		Optional.ofNullable(player.getName()).map(Titles::quoted).ifPresent(words::add);
		words.add("{");
		if (player.isSetTone()) {
			words.add("tone " + player.getTone());
		}
		if (player.isSetSaliva()) {
			words.add("saliva " + player.getSaliva());
		}
		Optional.ofNullable(player.getHome()).map(PlanLines::home).ifPresent(words::add);
		words.add("}");
		return String.join(" ", words);
	}

	private static String home(Climate home) {
		return String.format(Locale.ROOT, "home %s °C %s %%RH", home.getTemperature().toPlainString(),
				home.getHumidity().toPlainString());
	}

	/** References as they were written, since the new plan sees the same stock. */
	private static String fitting(Fitting fitting) {
		return "fit" + written("", fitting, PlanPackage.Literals.FITTING__PAD)
				+ written(" on", fitting, PlanPackage.Literals.FITTING__BACKING)
				+ written(" with", fitting, PlanPackage.Literals.FITTING__FILMS)
				+ written(" glue", fitting, PlanPackage.Literals.FITTING__ADHESIVE);
	}

	private static String written(String keyword, EObject element, EReference reference) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(element, reference);
		return nodes.isEmpty() ? "" : keyword + " " + NodeModelUtils.getTokenText(nodes.get(0));
	}
}
