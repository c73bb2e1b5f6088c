package padwright.paper.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.plan.Phase;
import padwright.model.plan.PlayTest;
import padwright.model.plan.PlayVerdict;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.model.plan.SecondLook;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.model.stock.PaperName;
import padwright.paper.handback.HandBack.Section;
import padwright.paper.handback.HandBack;
import padwright.paper.words.Messages;
import padwright.workup.cautions.Cautions;
import padwright.workup.choose.PadChoice;
import padwright.workup.choose.Reason;
import padwright.workup.job.DoneAtKey;
import padwright.workup.job.JobRecord;
import padwright.workup.job.Letterheads;
import padwright.workup.job.OpenWork;
import padwright.workup.parts.Labels;
import padwright.workup.parts.RowWork;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.Phrase;

/**
 * The hand-back page of a plan. What it says of care is common practice, no source, as is the yearly service. It names
 * no customer, and uses no word of the shop that a player would have to look up.
 */
public final class PlanHandBack {

	private final ServicePlan plan;
	private final JobRecord record;
	private final List<RowWork> rows;
	private final Set<Pad> newPads = new LinkedHashSet<>();

	private PlanHandBack(PlanSolution solution) {
		this.plan = solution.plan();
		this.record = JobRecord.of(plan.plan());
		this.rows = RowWork.of(solution).stream().filter(row -> row.job().key().isPresent()).toList();
		rows.stream().map(RowWork::job).filter(DoneAtKey::isPadIn).flatMap(job -> job.fitting().pad().stream())
				.forEach(newPads::add);
	}

	/**
	 * The page, with what the plan says is done alone.
	 *
	 * @throws UndoneWorkException if the plan begins work that it does not say is done
	 */
	public static HandBack of(PlanSolution solution) {
		List<Phrase> open = OpenWork.of(solution.plan());
		if (!open.isEmpty()) {
			throw new UndoneWorkException(open);
		}
		PlanHandBack page = new PlanHandBack(solution);
		String title = Messages.of("back.title");
		return new HandBack(PlanHead.letter(title, page.plan, page.record.delivered()), PlanHead.title(title, page.plan),
				List.of(new Section(Messages.of("back.done"), PlanDone.of(page.plan)), new Section(Messages.of("back.materials"), page.materials()),
						new Section(Messages.of("back.care"), page.care()), new Section(Messages.of("back.expect"), page.expect()),
						new Section(Messages.of("back.when"), page.back()),
						new Section("", Letterheads.words(page.plan, PaperName.HANDBACK))));
	}

	private List<String> materials() {
		List<String> words = new ArrayList<>();
		newPads.forEach(pad -> words.add(Messages.of("back.new", Labels.of(pad) + made(pad)) + why(pad)));
		if (words.isEmpty()) {
			words.add(Messages.of("back.oldPads"));
		}
		List<String> glues = rows.stream().filter(row -> DoneAtKey.isPadIn(row.job()))
				.flatMap(row -> row.job().fitting().adhesive().stream()).map(Labels::of).distinct().toList();
		if (!glues.isEmpty()) {
			words.add(Messages.of("back.glue", String.join(", ", glues)));
		}
		List<String> animal = materialsOfNewPads().filter(Material::isAnimal).map(Labels::of).distinct().toList();
		if (!animal.isEmpty()) {
			words.add(Messages.of("back.animal", String.join(", ", animal)));
		}
		words.addAll(Cautions.hazardsOf(plan));
		words.add(Messages.of("back.sheets"));
		return words;
	}

	/** What the shop says for the pad at the keys that have it; what it says against is its own matter. */
	private String why(Pad pad) {
		List<String> reasons = PadChoice.of(plan).stream().flatMap(choice -> choice.keys().stream())
				.filter(key -> key.job().fitting().pad().filter(pad::equals).isPresent())
				.flatMap(key -> key.of(pad).stream()).flatMap(candidate -> candidate.reasons().stream())
				.filter(Reason::isFor).map(Reason::text).distinct().toList();
		return reasons.isEmpty() ? "" : " " + Messages.of("back.why", String.join("; ", reasons));
	}

	private static String made(Pad pad) {
		List<String> layers = pad.getLayers().stream().flatMap(layer -> Resolved.of(layer.getMaterial()).stream())
				.map(Labels::of).toList();
		return layers.isEmpty() ? "" : ", " + Messages.of("back.made", String.join(", ", layers));
	}

	private Stream<Material> materialsOfNewPads() {
		return newPads.stream().flatMap(pad -> pad.getLayers().stream())
				.flatMap(layer -> Resolved.of(layer.getMaterial()).stream());
	}

	private List<String> care() {
		List<String> care = new ArrayList<>(Stream.of("swab", "clean", "blot", "heat", "assemble")
				.map(each -> Messages.of("back.care." + each)).toList());
		if (hasAcidicPlayer()) {
			care.add(Messages.of("back.care.saliva"));
		}
		return care;
	}

	private boolean hasAcidicPlayer() {
		Player player = plan.plan().getPlayer();
		return player != null && player.isSetSaliva() && player.getSaliva() == Saliva.ACIDIC;
	}

	private List<String> expect() {
		List<String> words = new ArrayList<>();
		if (isRightAsItLeft()) {
			words.add(Messages.of("back.right"));
		}
		words.add(Messages.of("back.weather"));
		words.add(Messages.of("back.wipe"));
		return words;
	}

	/** Said only where the plan says that all new pads were felt as they left, and that no note was left weak. */
	private boolean isRightAsItLeft() {
		List<PlayTest> after = record.all(PlayTest.class).stream().filter(test -> test.getPhase() == Phase.AFTER).toList();
		List<RowWork> newPads = rows.stream().filter(row -> DoneAtKey.isPadIn(row.job())).toList();
		boolean isChecked = !after.isEmpty() || !newPads.isEmpty();
		return isChecked && after.stream().allMatch(test -> test.getVerdict() == PlayVerdict.GOOD)
				&& newPads.stream().allMatch(row -> DoneAtKey.isFeltAsDelivered(row.job()));
	}

	private List<String> back() {
		List<String> words = new ArrayList<>();
		record.last(SecondLook.class).filter(look -> look.getDate() == null).map(SecondLook::getDue)
				.ifPresent(day -> words.add(Messages.of("back.secondLook", day)));
		words.addAll(List.of(Messages.of("back.year"), Messages.of("back.sooner"), Messages.of("back.fall")));
		return words;
	}
}
