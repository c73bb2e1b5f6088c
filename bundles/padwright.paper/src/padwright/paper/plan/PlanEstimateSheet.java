package padwright.paper.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.plan.Agreement;
import padwright.model.plan.Estimate;
import padwright.model.plan.EstimateOption;
import padwright.model.stock.PaperName;
import padwright.paper.money.MoneySheet;
import padwright.paper.money.MoneySheet.Section;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.money.PlanMoney;
import padwright.workup.service.ServicePlan;

/** The estimate of a plan for the player: what was found, and each way to go on with what it costs. */
public final class PlanEstimateSheet {

	private static final String TITLE = "Estimate";

	private PlanEstimateSheet() {
	}

	/** @throws IllegalArgumentException if the plan has no option of an estimate */
	public static MoneySheet of(ServicePlan plan) {
		PlanMoney money = new PlanMoney(plan);
		JobRecord record = JobRecord.of(plan.plan());
		if (money.options().isEmpty()) {
			throw new IllegalArgumentException("the plan has no estimate; write estimate with its options into its job");
		}
		Optional<LocalDate> date = record.last(Estimate.class).map(Estimate::getDate);
		return new MoneySheet(PlanHead.letter(TITLE, plan, date), PlanHead.title(TITLE, plan), MoneyBlocks.currency(money),
				List.of(new Section("What we found", found(plan))), money.options().stream()
						.map(option -> MoneyBlocks.of(heading(option, money), option.getItems(), money, List.of())).toList(),
				List.of(new Section("", after(money, record)),
						new Section("", Letterheads.words(plan, PaperName.ESTIMATE))));
	}

	private static List<String> found(ServicePlan plan) {
		List<String> found = new ArrayList<>(PlanFound.pads(plan));
		found.addAll(PlanFound.instrument(plan));
		return found;
	}

	private static String heading(EstimateOption option, PlanMoney money) {
		String name = name(option);
		if (money.options().size() == 1) {
			return name;
		}
		return "Option " + (money.options().indexOf(option) + 1) + ": " + name;
	}

	static String name(EstimateOption option) {
		return option.getLabel() == null ? option.getName() : option.getLabel();
	}

	private static List<String> after(PlanMoney money, JobRecord record) {
		if (money.agreed().isPresent()) {
			return List.of("Agreed" + record.last(Agreement.class).map(Agreement::getDate).map(day -> " on " + day).orElse("")
					+ ": " + name(money.agreed().get()) + ".");
		}
		return List.of(money.options().size() == 1 ? "Please tell us whether you agree."
				: "Please tell us which one you want; each stands for itself.");
	}
}
