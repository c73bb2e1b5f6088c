package padwright.workup.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;
import org.junit.jupiter.api.Test;

import padwright.model.plan.Fitting;
import padwright.model.plan.PlanFactory;
import padwright.model.stock.Adhesive;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.stock.StockFactory;

class EffectiveFittingTest {

	private static final StockFactory STOCK = StockFactory.eINSTANCE;

	private final Pad hard = STOCK.createPad();
	private final Pad soft = STOCK.createPad();
	private final Backing disc = STOCK.createBacking();
	private final FilmSet clear = STOCK.createFilmSet();
	private final FilmSet paper = STOCK.createFilmSet();
	private final Adhesive shellac = STOCK.createAdhesive();
	private final Fitting planned = fitting(hard, disc, clear, shellac);

	private static Fitting fitting(Pad pad, Backing disc, FilmSet films, Adhesive glue) {
		Fitting fitting = PlanFactory.eINSTANCE.createFitting();
		fitting.setPad(pad);
		fitting.setBacking(disc);
		fitting.setFilms(films);
		fitting.setAdhesive(glue);
		return fitting;
	}

	@Test
	void withoutItsOwnAKeyHasThePlans() {
		EffectiveFitting fitting = new EffectiveFitting(null, planned);
		assertEquals(Optional.of(hard), fitting.pad());
		assertEquals(Optional.of(disc), fitting.backing());
		assertEquals(Optional.of(clear), fitting.films());
		assertEquals(Optional.of(shellac), fitting.adhesive());
		assertEquals(Optional.of(planned), fitting.source());
	}

	@Test
	void anotherPadComesWithoutThePlansBacking() {
		Fitting own = fitting(soft, null, null, null);
		EffectiveFitting fitting = new EffectiveFitting(own, planned);
		assertEquals(Optional.of(soft), fitting.pad());
		assertEquals(Optional.empty(), fitting.backing());
		assertEquals(Optional.of(clear), fitting.films());
		assertEquals(Optional.of(shellac), fitting.adhesive());
		assertEquals(Optional.of(own), fitting.source());
	}

	@Test
	void itsOwnFilmGoesBeforeThePlans() {
		assertEquals(Optional.of(paper), new EffectiveFitting(fitting(soft, null, paper, null), planned).films());
	}

	@Test
	void aBrokenLinkIsNothing() {
		Pad missing = STOCK.createPad();
		((InternalEObject) missing).eSetProxyURI(URI.createURI("shop:/missing.stock#//"));
		FilmSet missingFilm = STOCK.createFilmSet();
		((InternalEObject) missingFilm).eSetProxyURI(URI.createURI("shop:/missing.stock#//"));
		EffectiveFitting fitting = new EffectiveFitting(fitting(missing, null, missingFilm, null), planned);
		assertEquals(Optional.empty(), fitting.pad());
		assertEquals(Optional.of(clear), fitting.films());
	}

	@Test
	void withoutAnyThereIsNothing() {
		EffectiveFitting fitting = new EffectiveFitting(null, null);
		assertEquals(Optional.empty(), fitting.source());
		assertEquals(Optional.empty(), fitting.pad());
		assertEquals(Optional.empty(), fitting.films());
	}
}
