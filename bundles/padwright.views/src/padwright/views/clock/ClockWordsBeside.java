package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.RimProfile;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;

/** What the readings come to, in words and figures: the spread before and after, and the gap in parts. */
final class ClockWordsBeside {

	private static final double SIZE = 1.05;
	private static final double LINE = 1.75;
	private static final double WIDTH = 20;

	private final ClockPicture picture;
	private final Palette palette;
	private final List<Element> elements = new ArrayList<>();
	private double y;

	ClockWordsBeside(ClockPicture picture, Palette palette) {
		this.picture = picture;
		this.palette = palette;
	}

	List<Element> draw() {
		elements.add(Text.of(picture.state().label(), 0, y, Face.BOLD, SIZE * 1.6).in(palette.ink()));
		y += LINE * 1.3;
		entry();
		Optional<RimProfile> gap = picture.isFitted() ? picture.state().gap() : Optional.empty();
		gap.ifPresent(this::spreads);
		gap.map(ProfileSplit::of).ifPresent(this::split);
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

	private void spreads(RimProfile gap) {
		Length before = gap.spread();
		row(Messages.of("clock.before"), Figures.shown(before), Face.BOLD, judged(before));
		Optional<RimProfile> after = picture.proposal().isPresent()
				? picture.proposal().flatMap(ClockProposal::left) : picture.state().left(picture.pieces());
		after.ifPresent(left -> row(
				Messages.of(picture.proposal().isPresent() ? "clock.proposed" : "clock.after"),
				Figures.shown(left.spread()), Face.BOLD, judged(left.spread())));
		picture.state().tolerance()
				.ifPresent(most -> row(Messages.of("clock.tolerance"), Figures.shown(most), Face.REGULAR,
						palette.quiet()));
		elements.add(new Drawn(new Line(0, y - LINE * 0.7, WIDTH, y - LINE * 0.7),
				Style.stroked(palette.quiet(), 0.08)));
		y += LINE * 0.3;
	}

	private Ink judged(Length spread) {
		boolean passes = picture.state().tolerance().filter(most -> !spread.isLongerThan(most)).isPresent();
		return passes ? palette.done() : palette.error();
	}

	private void split(ProfileSplit split) {
		row(Messages.of("clock.height"), Figures.shown(split.height()), Face.REGULAR, palette.ink());
		part("clock.tilt", split.tilt().fromTightToOpen(), split.tilt().openHours());
		part("clock.saddle", split.saddle().fromTightToOpen(), split.saddle().openHours());
		row(Messages.of("clock.film"), Figures.shown(split.filmOnly()), Face.REGULAR, palette.ink());
	}

	private void part(String message, Length height, List<ClockHour> open) {
		if (height.inThou() >= 0.05) {
			row(Messages.of(message, open.stream().map(ClockHour::toString).collect(Collectors.joining(", "))),
					Figures.shown(height), Face.REGULAR, palette.ink());
		}
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
