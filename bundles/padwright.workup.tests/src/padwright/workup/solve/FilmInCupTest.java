package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.model.SignedMeasure;
import padwright.model.plan.KeyService;
import padwright.model.plan.Piece;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.service.KeyJob;

class FilmInCupTest {

	private final DemoPlan demo = new DemoPlan();
	private final KeyService row = demo.row(demo.key("F"));

	private static List<String> pieces(FilmInCup film) {
		return film.pieces().stream().map(PartialShim::toString).toList();
	}

	private KeyJob job() {
		return demo.service().jobs().get(0);
	}

	private void takeOut(Round round, int placed) {
		Piece piece = row.getRounds().get(0).getPieces().get(placed);
		demo.shim(round, piece.getThickness().toString().replace(" thou", ""), piece.getFrom().toString(),
				piece.getTo().toString());
		round.getRemoved().add(round.getPieces().remove(round.getPieces().size() - 1));
	}

	@Test
	void eachRoundFindsWhatThoseBeforeItLeft() {
		Round first = demo.felt(row, ". 1 2 0.5");
		demo.shim(first, "2", "4", "8");
		demo.shim(first, "0.5", "2", "3");
		first.setFull(SignedMeasure.valueOf("+0.5 thou"));
		Round second = demo.felt(row, ". . 1 .");
		takeOut(second, 0);
		demo.shim(second, "1", "5", "7.5");
		second.setFull(SignedMeasure.valueOf("-1 thou"));
		Round third = demo.felt(row, ". . . .");
		assertEquals(FilmInCup.NONE, FilmInCup.at(job(), first));
		assertEquals(List.of("2 from 4 to 8", "0.5 from 2 to 3"), pieces(FilmInCup.at(job(), second)));
		assertEquals(Length.thou("0.5"), FilmInCup.at(job(), second).fullChange());
		assertEquals(List.of("0.5 from 2 to 3", "1 from 5 to 7.5"), pieces(FilmInCup.at(job(), third)));
		assertEquals(Length.ZERO.minus(Length.thou("0.5")), FilmInCup.now(job()).fullChange());
	}

	@Test
	void ofTwoAlikeOneComesOut() {
		Round first = demo.felt(row, ". 1 2 0.5");
		demo.shim(first, "2", "4", "8");
		demo.shim(first, "2", "4", "8");
		takeOut(demo.felt(row, ". . 1 ."), 0);
		assertEquals(List.of("2 from 4 to 8"), pieces(FilmInCup.now(job())));
	}

	@Test
	void takenOutPiecesAreWasteAndFullShimsComeBackWhole() {
		row.setStack(demo.thicknesses("5 2"));
		Round first = demo.felt(row, ". 1 2 0.5");
		demo.shim(first, "2", "4", "8");
		first.setFull(SignedMeasure.valueOf("-2 thou"));
		Round second = demo.felt(row, ". . 1 .");
		takeOut(second, 0);
		second.setFull(SignedMeasure.valueOf("+0.5 thou"));
		assertEquals(List.of("5 false", "2 false", "2 true", "2 false", "0.5 false"), FilmUse.in(job()).stream()
				.map(use -> use.thickness().inThou() + " " + use.back()).map(text -> text.replace(".0", "")).toList());
		assertEquals(List.of(Length.thou("5"), Length.thou("0.5")), FullShims.now(job()).shims());
	}
}
