package padwright.workup.parts;

import padwright.workup.service.EffectiveFitting;

/** What is fitted, in words. */
public final class FitWords {

	private FitWords() {
	}

	/** As in {@code rigid-base pad on 20 thou disc, polyester film, Shellac}; empty for nothing. */
	public static String of(EffectiveFitting fitting) {
		StringBuilder text = new StringBuilder();
		fitting.pad().ifPresent(pad -> text.append(Labels.of(pad)));
		fitting.backing().ifPresent(disc -> text.append(" on ").append(Labels.of(disc)));
		fitting.films().ifPresent(films -> text.append(", ").append(Labels.of(films)));
		fitting.adhesive().ifPresent(glue -> text.append(", ").append(Labels.of(glue)));
		return text.toString();
	}
}
