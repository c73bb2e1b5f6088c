package padwright.paper.system;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.emf.common.util.Enumerator;

import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Touch;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.sheet.LayoutSheet;
import padwright.paper.sheet.SheetCoupling;
import padwright.paper.sheet.SheetKey;
import padwright.paper.words.Messages;
import padwright.workup.parts.CouplingWords;
import padwright.workup.parts.Labels;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.report.Figures;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.ClockWords;
import padwright.workup.words.Terms;

/** The key-layout sheet of a key system, with all that it inherits. */
public final class SystemSheet {

	private final KeySystem system;
	private final ServicePlan plan;
	private final List<EffectiveKey> keys;
	/** Couplings in the order of their numbers. */
	private final List<Coupling> numbered = new ArrayList<>();

	private SystemSheet(KeySystem system) {
		this.system = system;
		Plan empty = PlanFactory.eINSTANCE.createPlan();
		empty.setSystem(system);
		this.plan = new ServicePlan(empty);
		this.keys = FromHeadDown.keys(plan.system());
	}

	/**
	 * The sheet.
	 *
	 * @param revision what tells this sheet from others of the system; the last one that the system tells of if not said
	 * @param date as it is to be printed; the day of that revision if not said
	 * @throws IllegalArgumentException if the system has neither a key nor a hole, or keys close each other in a circle
	 */
	public static LayoutSheet of(KeySystem system, Optional<String> revision, Optional<String> date) {
		return new SystemSheet(system).sheet(revision, date);
	}

	private LayoutSheet sheet(Optional<String> revision, Optional<String> date) {
		PlanCouplings.graph(plan);
		String title = Messages.of("sheet.title");
		String subline = title + " · " + system.getName()
				+ date.or(() -> SheetRevisions.day(system)).map(day -> " · " + day).orElse("");
		String right = revision.or(() -> SheetRevisions.last(system)).map(text -> Messages.of("sheet.revision", text)).orElse("");
		HeadText head = new HeadText(Labels.of(system), right, subline, facts());
		SheetFingerings fingerings = new SheetFingerings(plan.system(), keys);
		List<SheetCoupling> couplings = couplings();
		SheetTables tables = new SheetTables(plan.system(), numbered, SheetRevisions.table(system));
		return new LayoutSheet(head, title + ", " + Labels.of(system), ClockWords.inWords(system),
				keys.stream().map(SystemSheet::key).toList(), couplings, tables.joints(), tables.rods(), tables.fingerHoles(),
				tables.all(),
				fingerings.touches(), fingerings.holes(), fingerings.notes());
	}

	private List<PageFact> facts() {
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact(Messages.of("fact.pads"), String.valueOf(plan.system().pads().size())));
		facts.add(new PageFact(Messages.of("fact.pitch"), Messages.of("fact.pitchAt", Figures.plain(plan.system().pitch()),
				Figures.plain(plan.system().temperature()))));
		sounds().ifPresent(words -> facts.add(new PageFact(Messages.of("fact.sounds"), words)));
		Resolved.of(system.getBase()).ifPresent(base -> facts.add(new PageFact(Messages.of("fact.basedOn"), Labels.of(base))));
		return facts;
	}

	/** How much higher or lower than written; empty as written. */
	private Optional<String> sounds() {
		BigDecimal semitones = plan.system().transposition();
		return semitones.signum() == 0 ? Optional.empty() : Optional.of(Messages.of(
				semitones.signum() > 0 ? "fact.higher" : "fact.lower", Figures.plain(semitones.abs()), semitones.abs()));
	}

	private static SheetKey key(EffectiveKey key) {
		return new SheetKey(key.name(), key.label(), key.posture() == Posture.CLOSED, touches(key),
				key.holeDiameter(), key.rimWidth(), key.chimney(), key.undercut(), word(key.holeMake()), key.cupDiameter(),
				key.cupDepth(), key.cupStyle().filter(CupStyle.PERFORATED::equals).isPresent(), key.perforation(),
				word(key.fastening()), word(key.hinge()), key.hinge().filter(HingeSide.FAR::equals).isPresent(), key.arm(),
				key.rise(), key.spring().map(grams -> Messages.of("parts.grams", Figures.plain(grams), grams)).orElse(""),
				key.whole().map(EffectiveKey::label).orElse(""), key.joint().map(EffectiveJoint::label).orElse(""), key.position(),
				key.around().doubleValue());
	}

	private static String touches(EffectiveKey key) {
		return key.touches().stream().flatMap(touch -> Resolved.of(touch).stream()).map(Touch::getName)
				.collect(Collectors.joining(", "));
	}

	private static String word(Optional<? extends Enumerator> value) {
		return value.map(Terms::of).orElse("");
	}

	private List<SheetCoupling> couplings() {
		List<SheetCoupling> couplings = new ArrayList<>();
		for (int driver = 0; driver < keys.size(); driver++) {
			EffectiveKey key = keys.get(driver);
			add(driver, Messages.of("sheet.closes"), key.closes(), couplings);
			add(driver, Messages.of("sheet.opens"), key.opens(), couplings);
			add(driver, Messages.of("sheet.holds"), key.holds(), couplings);
		}
		return couplings;
	}

	private void add(int driver, String effect, List<Coupling> all, List<SheetCoupling> couplings) {
		for (Coupling coupling : all) {
			int driven = index(coupling.getDriven());
			if (driven >= 0) {
				numbered.add(coupling);
				couplings.add(new SheetCoupling(driver, effect, driven, CouplingWords.of(coupling)));
			}
		}
	}

	/** The place of a key in the system; -1 for a broken link or a key that was removed. */
	private int index(Key definition) {
		return IntStream.range(0, keys.size()).filter(key -> keys.get(key).definition() == definition).findFirst()
				.orElse(-1);
	}
}
