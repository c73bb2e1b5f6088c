package padwright.paper.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Resolved;
import padwright.model.plan.Plan;
import padwright.model.plan.Player;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.words.Messages;
import padwright.workup.job.JobRecord;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Days;

/** What all papers of a plan say of it. */
final class PlanHead {

	private PlanHead() {
	}

	static String instrument(ServicePlan plan) {
		return Resolved.of(plan.plan().getSystem()).map(Labels::of).orElse("");
	}

	static String serial(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getSerial()).orElse("");
	}

	/** The head of a paper called {@code title}. */
	static HeadText of(String title, ServicePlan plan, List<PageFact> facts) {
		Plan source = plan.plan();
		return HeadText.ofPlan(title, instrument(plan), serial(plan), Labels.of(source),
				Optional.ofNullable(source.getDate()), facts);
	}

	/** The head of a letter to the player, under the shop's own: who it is for and when, without a name of the plan. */
	static HeadText letter(String title, ServicePlan plan, Optional<LocalDate> date) {
		List<PageFact> facts = came(plan);
		JobRecord.of(plan.plan()).delivered().ifPresent(day -> facts.add(new PageFact(Messages.of("fact.handedOver"), Days.of(day))));
		return letter(title, plan, date, facts);
	}

	/** As {@link #letter}, of a letter from before the work, however often it is printed. */
	static HeadText before(String title, ServicePlan plan, Optional<LocalDate> date) {
		return letter(title, plan, date, came(plan));
	}

	private static HeadText letter(String title, ServicePlan plan, Optional<LocalDate> date, List<PageFact> facts) {
		String serial = serial(plan).isEmpty() ? "" : " · " + Messages.of("head.serial", serial(plan));
		return new HeadText(title, date.map(Days::of).orElse(""), instrument(plan) + serial, facts,
				PlanLetterhead.of(plan));
	}

	private static List<PageFact> came(ServicePlan plan) {
		List<PageFact> facts = new ArrayList<>();
		Optional.ofNullable(plan.plan().getPlayer()).map(Player::getName).ifPresent(name -> facts.add(new PageFact(Messages.of("fact.for"), name)));
		JobRecord.of(plan.plan()).came().ifPresent(day -> facts.add(new PageFact(Messages.of("fact.came"), Days.of(day))));
		return facts;
	}

	/** The document's title, as in {@code Film cutting sheet, Boehm flute A-1042}. */
	static String title(String title, ServicePlan plan) {
		return (title + ", " + instrument(plan) + " " + serial(plan)).strip();
	}

	/** Seat tolerance, default fitting and stock, as far as the plan says them. */
	static List<PageFact> facts(ServicePlan plan) {
		List<PageFact> facts = new ArrayList<>();
		Optional.ofNullable(plan.plan().getFitting())
				.ifPresent(fitting -> facts.add(new PageFact(Messages.of("fact.fit"), FitText.of(fitting))));
		plan.stock().ifPresent(stock -> facts.add(new PageFact(Messages.of("fact.stock"), Labels.of(stock))));
		return facts;
	}
}
