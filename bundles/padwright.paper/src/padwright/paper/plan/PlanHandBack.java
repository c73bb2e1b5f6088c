package padwright.paper.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import padwright.model.Present;
import padwright.model.plan.Phase;
import padwright.model.plan.PlayTest;
import padwright.model.plan.PlayVerdict;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.model.plan.SecondLook;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.model.stock.PaperName;
import padwright.paper.handback.HandBack;
import padwright.paper.handback.HandBack.Section;
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

/**
 * The hand-back page of a plan. What it says of care is common practice, no source, as is the yearly service. It names
 * no customer, and uses no word of the shop that a player would have to look up.
 */
public final class PlanHandBack {

	private static final String TITLE = "Your instrument is back";

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
		List<String> open = OpenWork.of(solution.plan());
		if (!open.isEmpty()) {
			throw new UndoneWorkException(open);
		}
		PlanHandBack page = new PlanHandBack(solution);
		return new HandBack(PlanHead.letter(TITLE, page.plan, page.record.delivered()), PlanHead.title(TITLE, page.plan),
				List.of(new Section("What was done", PlanDone.of(page.plan)), new Section("What is in it now", page.materials()),
						new Section("Care", page.care()), new Section("What to expect", page.expect()),
						new Section("When to come back", page.back()),
						new Section("", Letterheads.words(page.plan, PaperName.HANDBACK))));
	}

	private List<String> materials() {
		List<String> words = new ArrayList<>();
		newPads.forEach(pad -> words.add("New: " + Labels.of(pad) + made(pad) + "." + why(pad)));
		if (words.isEmpty()) {
			words.add("The pads that were in it.");
		}
		List<String> glues = rows.stream().filter(row -> DoneAtKey.isPadIn(row.job()))
				.flatMap(row -> row.job().fitting().adhesive().stream()).map(Labels::of).distinct().toList();
		if (!glues.isEmpty()) {
			words.add("Set in: " + String.join(", ", glues) + ".");
		}
		List<String> animal = materialsOfNewPads().filter(Material::isAnimal).map(Labels::of).distinct().toList();
		if (!animal.isEmpty()) {
			words.add("Made from animals: " + String.join(", ", animal)
					+ ". Tell us if you are allergic, and ask about the rules before you travel across borders.");
		}
		words.addAll(Cautions.hazardsOf(plan));
		words.add("Ask us for the suppliers' safety data sheets if you are sensitive to something: what they say counts more "
				+ "than this page.");
		return words;
	}

	/** What the shop says for the pad at the keys that have it; what it says against is its own matter. */
	private String why(Pad pad) {
		List<String> reasons = PadChoice.of(plan).stream().flatMap(choice -> choice.keys().stream())
				.filter(key -> key.job().fitting().pad().filter(pad::equals).isPresent())
				.flatMap(key -> key.of(pad).stream()).flatMap(candidate -> candidate.reasons().stream())
				.filter(Reason::isFor).map(Reason::text).distinct().toList();
		return reasons.isEmpty() ? "" : " Why this one: " + String.join("; ", reasons) + ".";
	}

	private static String made(Pad pad) {
		List<String> layers = pad.getLayers().stream().flatMap(layer -> Present.of(layer.getMaterial()).stream())
				.map(Labels::of).toList();
		return layers.isEmpty() ? "" : ", made of " + String.join(", ", layers);
	}

	private Stream<Material> materialsOfNewPads() {
		return newPads.stream().flatMap(pad -> pad.getLayers().stream())
				.flatMap(layer -> Present.of(layer.getMaterial()).stream());
	}

	private List<String> care() {
		List<String> care = new ArrayList<>(List.of(
				"Swab the instrument dry after playing, and let it dry before you close the case.",
				"Play with clean hands and a clean mouth: sugar and saliva age pads.",
				"Blot a damp or sticky pad with clean paper laid under it. Do not pull the paper out under pressure, "
						+ "and use no powder.",
				"Keep it from heat, strong sun and cold cars. Use no polish, alcohol or solvent near the pads.",
				"Put it together by the parts without keys, and never turn a screw to make a pad close."));
		if (hasAcidicPlayer()) {
			care.add("Your saliva is hard on pads: rinse your mouth before playing, and dry the pads more often.");
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
			words.add("It is right as it leaves us; it needs no playing in, and does not get better by waiting.");
		}
		words.add("Weather moves pads. If your home is much damper, drier, warmer or colder than our shop, a note may "
				+ "answer less easily at first: let us know if it stays so.");
		words.add("Wipe what touches your lips before you play: it was handled at the bench.");
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
				.ifPresent(day -> words.add("Around " + day + ", for a second look that costs nothing."));
		words.addAll(List.of("In a year, for cleaning, oil and adjustment, even if all seems well: oil dries.",
				"Sooner, if a note needs more pressure than it did, a key clicks, a pad sticks, or you see a tear in one.",
				"At once after a fall: do not play it until it was looked at."));
		return words;
	}
}
