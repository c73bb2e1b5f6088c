package padwright.workup.harm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.LeakHarm;
import padwright.engine.acoustics.TargetNote;
import padwright.workup.leak.PadAsFelt;
import padwright.workup.leak.PadsAsFelt;
import padwright.workup.leak.UnknownLeak;
import padwright.workup.service.ServicePlan;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.words.Phrase;

/**
 * What the pads of a plan do to the notes of its instrument by leaking as they were felt last, each by itself.
 *
 * @param notes names of the scale's usual fingerings, the lowest first
 * @param pads those that were felt, the most harmful first
 * @param leftOut keys that cannot be told
 */
public record PlanHarm(ServicePlan plan, List<String> notes, List<PadHarm> pads, List<UnknownLeak> leftOut) {

	/** Possible gaps looked at for each pad: enough for a mean and for the range of nine in ten. */
	private static final int GAPS = 20;
	/** Told where nothing is left of a note, in dB. */
	private static final double NOTHING_LEFT = 60;

	public PlanHarm {
		notes = List.copyOf(notes);
		pads = List.copyOf(pads);
		leftOut = List.copyOf(leftOut);
	}

	/** @throws java.util.NoSuchElementException if the system has no air column, which {@link SystemSound#missing} tells */
	public static PlanHarm of(ServicePlan plan, SystemSound sound) {
		List<TargetNote> scale = ScaleSound.of(sound).scale().stream().map(note -> note.tone().note()).toList();
		PadsAsFelt felt = PadsAsFelt.of(plan);
		List<UnknownLeak> leftOut = new ArrayList<>(felt.leftOut());
		Map<String, PadAsFelt> byHole = new LinkedHashMap<>();
		felt.pads().forEach(pad -> {
			Optional<String> hole = sound.holeUnder(pad.job().name());
			hole.ifPresentOrElse(under -> byHole.put(under, pad),
					() -> leftOut.add(new UnknownLeak(pad.job().name(), Phrase.of("harm.noHole"))));
		});
		Map<String, List<Cover.Leaking>> leaks = new LinkedHashMap<>();
		byHole.forEach((hole, pad) -> leaks.put(hole,
				LeakSize.spread(pad.asFelt().gaps(), GAPS).stream().map(Cover.Leaking::of).toList()));
		Map<String, Map<String, List<LeakHarm>>> harms = LeakHarm.of(sound.instrument().orElseThrow(), scale, leaks)
				.stream().collect(Collectors.groupingBy(LeakHarm::hole, Collectors
						.groupingBy(harm -> harm.note().label(), LinkedHashMap::new, Collectors.toList())));
		List<PadHarm> pads = byHole.entrySet().stream()
				.map(pad -> pad(pad.getValue().job().name(), harms.getOrDefault(pad.getKey(), Map.of()), scale.size()))
				.sorted(Comparator.comparingDouble(PadHarm::mean).reversed()).toList();
		return new PlanHarm(plan, scale.stream().map(TargetNote::label).toList(), pads, leftOut);
	}

	private static PadHarm pad(String key, Map<String, List<LeakHarm>> harms, int scale) {
		List<NoteHarm> notes = harms.entrySet().stream().map(note -> note(note.getKey(), note.getValue())).toList();
		double sum = notes.stream().mapToDouble(note -> note.decibels().expected()).sum();
		return new PadHarm(key, notes, sum / scale);
	}

	private static NoteHarm note(String note, List<LeakHarm> harms) {
		return new NoteHarm(note, Likely.of(harms.stream().mapToDouble(harm -> Math.min(NOTHING_LEFT, harm.decibels())).toArray()),
				Likely.of(harms.stream().mapToDouble(LeakHarm::cents).toArray()));
	}
}
