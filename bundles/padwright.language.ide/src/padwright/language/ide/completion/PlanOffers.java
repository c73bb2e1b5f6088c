package padwright.language.ide.completion;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.nodemodel.ILeafNode;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.LengthUnit;
import padwright.language.ide.facts.Rows;
import padwright.language.ide.words.Messages;
import padwright.model.FeelerReading;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.FilmStore;
import padwright.workup.words.LengthWords;

/** The numbers that can stand in the rows of a plan. */
final class PlanOffers {

	private static final String SHIM = "shim";
	private static final String OUT = "out";

	private PlanOffers() {
	}

	/** Thicknesses that are left in the row's film set, each with how many blanks are left. */
	static List<Offer> films(ContentAssistContext context) {
		return Rows.around(context.getCurrentModel()).stream().flatMap(job -> job.fitting().films().stream()
				.flatMap(films -> FilmStore.leftBy(job.plan(), films).supply().stream()))
				.filter(film -> film.pieces() > 0)
				.flatMap(film -> LengthText.number(film.thickness(), unit(context))
						.map(number -> Offer.of(number, left(film))).stream()).toList();
	}

	/** As {@link #films}; no offer where pieces are taken out. */
	static List<Offer> placedFilms(ContentAssistContext context) {
		String clause = "";
		for (ILeafNode leaf : context.getRootNode().getLeafNodes()) {
			if (leaf.getOffset() >= context.getOffset()) {
				break;
			}
			clause = leaf.getText().equals(SHIM) || leaf.getText().equals(OUT) ? leaf.getText() : clause;
		}
		return clause.equals(OUT) ? List.of() : films(context);
	}

	/** As {@link #films}, in a stack; no offer where gaps are written, which only measuring tells. */
	static List<Offer> stackedFilms(ContentAssistContext context) {
		boolean stacked = context.getCurrentModel() instanceof ThicknessRow row
				? row.eContainmentFeature() == PlanPackage.Literals.KEY_SERVICE__STACK
				: context.getLastCompleteNode().getText().equals("stack");
		return stacked ? films(context) : List.of();
	}

	private static LengthUnit unit(ContentAssistContext context) {
		return context.getCurrentModel() instanceof ThicknessRow row ? Lengths.unit(row.getUnit(), row)
				: Lengths.documentUnit(context.getCurrentModel());
	}

	private static String left(FilmSupply film) {
		return film.pieces() == FilmSupply.UNLIMITED ? Messages.of("offer.inStock")
				: Messages.of("offer.left", film.pieces());
	}

	/** The hours that are not listed yet. */
	static List<Offer> unreadHours(ContentAssistContext context) {
		Collection<ClockHour> listed = context.getCurrentModel() instanceof Round round ? round.getHours()
				: Optional.ofNullable(EcoreUtil2.getContainerOfType(context.getCurrentModel(), Plan.class))
						.<Collection<ClockHour>>map(Plan::getHours).orElse(List.of());
		return wholeHours().filter(hour -> !listed.contains(hour)).map(PlanOffers::hour).toList();
	}

	/** All whole hours. */
	static List<Offer> hours(ContentAssistContext context) {
		return wholeHours().map(PlanOffers::hour).toList();
	}

	private static Offer hour(ClockHour hour) {
		return Offer.of(hour.toString(), Messages.of("offer.hour"));
	}

	private static Stream<ClockHour> wholeHours() {
		return IntStream.rangeClosed(1, 12).mapToObj(ClockHour::ofHour);
	}

	/** What the feelers can say at the next hour; nothing once every hour is read. */
	static List<Offer> readings(ContentAssistContext context) {
		return Rows.around(context.getCurrentModel()).map(job -> readings(job, context)).orElse(List.of());
	}

	/** How the finest feeler can drag: in two ways where the plan grades its readings. */
	private static Stream<Offer> drags(KeyJob job, ClockHour hour) {
		return job.plan().plan().isGraded()
				? Stream.of(Offer.of(FeelerReading.DRAGS.toString(), Messages.of("offer.dragsFirmly", hour)),
						Offer.of(FeelerReading.DRAGS_LIGHTLY.toString(), Messages.of("offer.dragsLightly", hour)))
				: Stream.of(Offer.of(FeelerReading.DRAGS.toString(), Messages.of("offer.drags", hour)));
	}

	/** The pieces behind the pad, which can be taken out. */
	static List<Offer> piecesInPlace(ContentAssistContext context) {
		Round round = EcoreUtil2.getContainerOfType(context.getCurrentModel(), Round.class);
		return Rows.around(round).stream().flatMap(job -> FilmInCup.at(job, round).pieces().stream())
				.map(piece -> Offer.of(LengthText.measure(piece.thickness(), round) + " " + piece.arc(),
						Messages.of("offer.inPlace")))
				.toList();
	}

	private static List<Offer> readings(KeyJob job, ContentAssistContext context) {
		Round round = context.getCurrentModel() instanceof Round current ? current : null;
		List<ClockHour> hours = round == null ? job.plan().plan().getHours() : job.hours(round);
		int next = round == null ? 0 : round.getReadings().size();
		if (next >= hours.size()) {
			return List.of();
		}
		ClockHour hour = hours.get(next);
		LengthUnit unit = round == null ? Lengths.documentUnit(job.service()) : Lengths.unit(round.getUnit(), round);
		return Stream.concat(drags(job, hour),
				job.plan().feelers().stream().flatMap(leaf -> LengthText.number(leaf, unit)
						.map(number -> Offer.of(number, Messages.of("offer.free", LengthWords.withUnit(leaf), hour))).stream()))
				.toList();
	}
}
