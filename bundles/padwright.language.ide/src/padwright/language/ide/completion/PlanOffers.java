package padwright.language.ide.completion;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.LengthUnit;
import padwright.language.ide.facts.Figures;
import padwright.language.ide.facts.Rows;
import padwright.language.ide.words.Messages;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmStore;

/** The numbers that can stand in the rows of a plan. */
final class PlanOffers {

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

	private static List<Offer> readings(KeyJob job, ContentAssistContext context) {
		Round round = context.getCurrentModel() instanceof Round current ? current : null;
		List<ClockHour> hours = round == null ? job.plan().plan().getHours() : job.hours(round);
		int next = round == null ? 0 : round.getReadings().size();
		if (next >= hours.size()) {
			return List.of();
		}
		ClockHour hour = hours.get(next);
		LengthUnit unit = round == null ? Lengths.documentUnit(job.service()) : Lengths.unit(round.getUnit(), round);
		return Stream.concat(Stream.of(Offer.of(".", Messages.of("offer.drags", hour))),
				job.plan().feelers().stream().flatMap(leaf -> LengthText.number(leaf, unit)
						.map(number -> Offer.of(number, Messages.of("offer.free", Figures.thou(leaf), hour))).stream()))
				.toList();
	}
}
