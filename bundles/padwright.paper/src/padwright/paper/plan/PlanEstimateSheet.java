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
import padwright.paper.words.Messages;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.money.PlanMoney;
import padwright.workup.service.ServicePlan;

/** The estimate of a plan for the player: what was found, and each way to go on with what it costs. */
public final class PlanEstimateSheet {

	private PlanEstimateSheet() {
	}

	/** @throws IllegalArgumentException if the plan has no option of an estimate */
	public static MoneySheet of(ServicePlan plan) {
		PlanMoney money = new PlanMoney(plan);
		JobRecord record = JobRecord.of(plan.plan());
		if (money.options().isEmpty()) {
			throw new IllegalArgumentException(Messages.of("estimate.none"));
		}
		Optional<LocalDate> date = record.last(Estimate.class).map(Estimate::getDate);
		String title = Messages.of("estimate.title");
		return new MoneySheet(PlanHead.before(title, plan, date), PlanHead.title(title, plan), MoneyBlocks.currency(money),
				List.of(new Section(Messages.of("estimate.found"), found(plan))), money.options().stream()
						.map(option -> MoneyBlocks.of(heading(option, money), option.getItems(), money, List.of())).toList(),
				List.of(new Section("", after(money, record)),
						new Section("", Letterheads.words(plan, PaperName.ESTIMATE))));
	}

	private static List<String> found(ServicePlan plan) {
		List<String> found = new ArrayList<>(PlanFound.pads(plan));
		found.addAll(PlanFound.notes(plan));
		found.addAll(PlanFound.instrument(plan));
		return found;
	}

	private static String heading(EstimateOption option, PlanMoney money) {
		String name = name(option);
		if (money.options().size() == 1) {
			return name;
		}
		return Messages.of("estimate.option", money.options().indexOf(option) + 1, name);
	}

	static String name(EstimateOption option) {
		return option.getLabel() == null ? option.getName() : option.getLabel();
	}

	private static List<String> after(PlanMoney money, JobRecord record) {
		if (money.agreed().isPresent()) {
			String name = name(money.agreed().get());
			return List.of(record.last(Agreement.class).map(Agreement::getDate)
					.map(day -> Messages.of("estimate.agreedOn", day, name))
					.orElseGet(() -> Messages.of("estimate.agreed", name)));
		}
		return List.of(money.options().size() == 1 ? Messages.of("estimate.askOne")
				: Messages.of("estimate.askWhich"));
	}
}
