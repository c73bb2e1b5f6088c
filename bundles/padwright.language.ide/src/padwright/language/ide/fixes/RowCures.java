package padwright.language.ide.fixes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;

import padwright.language.edit.TextEdit;
import padwright.language.ide.facts.Rows;
import padwright.language.ide.words.Messages;
import padwright.model.plan.Fitting;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.stock.Assortment;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.workup.service.CupFit;
import padwright.workup.service.KeyJob;

/** Cures for the rows of a plan. */
final class RowCures {

	private RowCures() {
	}

	/** Moves the readings of a second row of a key to the first, where nothing else would be lost. */
	static List<Fix> merge(Site site) {
		KeyService second = site.nearest(KeyService.class);
		if (second == null || !(second.eContainer() instanceof Plan plan)) {
			return List.of();
		}
		return plan.getKeys().stream().filter(first -> first != second && first.getKey() == second.getKey()).findFirst()
				.filter(first -> saysNothingElse(second, first)).map(first -> merge(first, second)).stream().toList();
	}

	private static boolean saysNothingElse(KeyService second, KeyService first) {
		return isSameOrUnsaid(second.getFitting(), first.getFitting())
				&& isSameOrUnsaid(second.getEmpty(), first.getEmpty())
				&& isSameOrUnsaid(second.getStack(), first.getStack())
				&& (second.getRemark() == null || second.getRemark().equals(first.getRemark()))
				&& (!second.isSetFound() || first.isSetFound() && second.getFound() == first.getFound());
	}

	private static boolean isSameOrUnsaid(EObject second, EObject first) {
		return second == null || NodeText.of(second).equals(NodeText.of(first));
	}

	private static Fix merge(KeyService first, KeyService second) {
		List<TextEdit> edits = new ArrayList<>();
		StringBuilder readings = new StringBuilder();
		for (Round round : second.getRounds()) {
			readings.append(' ').append(NodeText.of(round));
		}
		if (!readings.isEmpty()) {
			edits.add(NodeText.insertAfter(lastBeforeRemark(first), readings.toString()));
		}
		edits.add(NodeText.remove(NodeText.node(second)));
		return new Fix(Messages.of("fix.mergeRows"), edits);
	}

	private static INode lastBeforeRemark(KeyService row) {
		List<EObject> parts = row.eContents();
		return parts.isEmpty() ? keyOrFound(row) : parts.stream().map(NodeText::node)
				.max((one, other) -> Integer.compare(one.getOffset(), other.getOffset())).orElseThrow();
	}

	private static INode keyOrFound(KeyService row) {
		return NodeText.nodes(row, row.isSetFound() ? PlanPackage.Literals.KEY_SERVICE__FOUND
				: PlanPackage.Literals.KEY_SERVICE__KEY).get(0);
	}

	/** Takes away the row of a key that the system lacks. */
	static List<Fix> remove(Site site) {
		KeyService row = site.nearest(KeyService.class);
		return row == null ? List.of()
				: List.of(Fix.of(Messages.of("fix.removeRow"), NodeText.remove(NodeText.node(row))));
	}

	/** Fits another pad of the stock that enters the cup. */
	static List<Fix> otherPads(Site site) {
		return Rows.around(site.element()).stream().flatMap(job -> pads(job)
				.filter(pad -> job.fitting().pad().filter(pad::equals).isEmpty() && enters(pad.getDiameters(), job))
				.flatMap(pad -> withPad(pad, job).stream())).toList();
	}

	private static Optional<Fix> withPad(Pad pad, KeyJob job) {
		Optional<Backing> disc = pad.isNeedsBacking() ? discs(job).findFirst() : Optional.empty();
		if (pad.isNeedsBacking() && disc.isEmpty()) {
			return Optional.empty();
		}
		String fitting = pad.getName() + disc.map(found -> " on " + found.getName()).orElse("");
		return Optional.of(Fix.of(Messages.of("fix.fit", fitting), fit(job.service(), fitting)));
	}

	private static TextEdit fit(KeyService row, String fitting) {
		Fitting own = row.getFitting();
		if (own == null) {
			return NodeText.insertAfter(keyOrFound(row), " fit " + fitting);
		}
		INode first = NodeText.nodes(own, PlanPackage.Literals.FITTING__PAD).get(0);
		List<INode> disc = NodeText.nodes(own, PlanPackage.Literals.FITTING__BACKING);
		int end = (disc.isEmpty() ? first : disc.get(0)).getEndOffset();
		return new TextEdit(first.getOffset(), end - first.getOffset(), fitting);
	}

	/** Puts a backing disc under the pad, where the pad is named. */
	static List<Fix> backings(Site site) {
		return Rows.around(site.element()).stream().flatMap(job -> job.fitting().source().stream()
				.flatMap(fitting -> discs(job).map(disc -> putOn(disc.getName(), fitting)))).toList();
	}

	private static Fix putOn(String disc, Fitting fitting) {
		INode pad = NodeText.nodes(fitting, PlanPackage.Literals.FITTING__PAD).get(0);
		return Fix.of(Messages.of("fix.putOn", disc), NodeText.insertAfter(pad, " on " + disc));
	}

	/** Those of the stock that enter the cup, the planned one first. */
	private static Stream<Backing> discs(KeyJob job) {
		Fitting planned = job.plan().plan().getFitting();
		Backing first = planned == null ? null : planned.getBacking();
		return Stream.concat(Stream.ofNullable(first), job.plan().stock().stream()
				.flatMap(stock -> stock.getBackings().stream())).distinct()
				.filter(disc -> enters(disc.getDiameters(), job));
	}

	private static boolean enters(Assortment diameters, KeyJob job) {
		return diameters == null || job.key().flatMap(key -> key.cupDiameter())
				.filter(cup -> CupFit.diameter(diameters, cup).isEmpty()).isEmpty();
	}

	private static Stream<Pad> pads(KeyJob job) {
		return job.plan().stock().stream().flatMap(stock -> stock.getPads().stream());
	}
}
