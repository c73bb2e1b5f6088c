package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.seating.SeatAnswer;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.solve.PadBelief;
import padwright.workup.solve.PadGap;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;

/** What the readings come to, in words and figures: how likely the pad is level, and how wide its gap is. */
final class ClockSummary {

	private static final double SIZE = 1.05;
	private static final double LINE = 1.75;
	private static final double WIDTH = 20;

	private final ClockPicture picture;
	private final Palette palette;
	private final List<Element> elements = new ArrayList<>();
	private double y;

	ClockSummary(ClockPicture picture, Palette palette) {
		this.picture = picture;
		this.palette = palette;
	}

	List<Element> draw() {
		elements.add(Text.of(picture.state().label(), 0, y, Face.BOLD, SIZE * 1.6).in(palette.ink()));
		y += LINE * 1.3;
		entry();
		Optional<PadGap> gap = picture.isFitted() ? picture.state().felt() : Optional.empty();
		gap.ifPresent(this::chances);
		picture.state().doubtful().stream().sorted()
				.forEach(hour -> line(Messages.of("clock.doubtful", hour), Face.CONDENSED_BOLD, palette.warning()));
		return elements;
	}

	private void entry() {
		int cursor = picture.entry().cursor();
		List<ClockHour> hours = picture.state().hours();
		if (cursor < hours.size()) {
			String typed = picture.entry().typed();
			row(Messages.of("clock.next", hours.get(cursor)), typed.isEmpty() ? "\u2026" : typed + "\u2502",
					typed.isEmpty() ? Face.REGULAR : Face.BOLD, palette.accent());
			y += LINE * 0.3;
		}
	}

	private void chances(PadGap felt) {
		chance("clock.before", felt.chance(), felt.band());
		Optional<SeatAnswer> proposed = picture.proposal().flatMap(ClockProposal::answer);
		proposed.ifPresent(seat -> chance("clock.proposed", seat.chance(), seat.gapAfter()));
		if (proposed.isEmpty()) {
			picture.state().left(picture.pieces()).ifPresent(left -> chance("clock.after", left.chance(), left.band()));
		}
		picture.state().tolerance()
				.ifPresent(most -> row(Messages.of("clock.tolerance"), Figures.shown(most), Face.REGULAR,
						palette.quiet()));
	}

	private void chance(String message, double chance, GapBand band) {
		ClockHour hour = PadGap.widest(band);
		row(Messages.of(message), Chance.of(chance), Face.BOLD, judged(chance));
		row(Messages.of("clock.gap", hour), GapWords.range(band, hour), Face.REGULAR, palette.ink());
		y += LINE * 0.3;
	}

	private Ink judged(double chance) {
		boolean passes = picture.state().job().filter(job -> chance >= PadBelief.prices(job).bar()).isPresent();
		return passes ? palette.done() : palette.error();
	}

	private void row(String name, String figure, Face face, Ink ink) {
		elements.add(Text.of(name, 0, y, face == Face.BOLD ? Face.BOLD : Face.REGULAR, SIZE).in(ink));
		elements.add(Text.of(figure, WIDTH, y, face, SIZE).anchored(Anchor.END).in(ink));
		y += LINE;
	}

	private void line(String text, Face face, Ink ink) {
		elements.add(Text.of(text, 0, y, face, SIZE).in(ink));
		y += LINE;
	}
}
