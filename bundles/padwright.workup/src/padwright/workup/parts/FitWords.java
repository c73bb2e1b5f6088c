package padwright.workup.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.workup.service.EffectiveFitting;
import padwright.workup.words.Messages;

/** What is fitted, in words. */
public final class FitWords {

	private FitWords() {
	}

	/** As in {@code rigid-base pad on 20 thou disc, polyester film, Shellac}; empty for nothing. */
	public static String of(EffectiveFitting fitting) {
		String pad = fitting.pad().map(Labels::of).orElse("");
		List<String> words = new ArrayList<>();
		words.add(fitting.backing().map(disc -> Messages.of("fit.on", pad, Labels.of(disc)).strip()).orElse(pad));
		fitting.films().ifPresent(films -> words.add(Labels.of(films)));
		fitting.adhesive().ifPresent(glue -> words.add(Labels.of(glue)));
		return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
	}
}
