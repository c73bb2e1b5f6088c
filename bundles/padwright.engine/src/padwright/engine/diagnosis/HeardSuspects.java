package padwright.engine.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which pads may leak, where it is known how much each of them weakens each note: a note is bad because a pad weakens it so
 * much, and a good one speaks only against pads that would have been heard in it. Every set of pads is weighed by Bayes'
 * rule: its prior odds times the chance of all that was heard, on average over how large the leaks may be. A note that was
 * played again counts again, as judged apart from the first time. Sets of one pad are all looked at, larger ones go on from
 * the likeliest.
 */
public final class HeardSuspects {

	private static final int WIDTH = 24;
	/** A set that is less likely is not told of. */
	private static final double LEAST_SHARE = 0.01;
	/** A bad note that all that is told of makes no likelier than this is not explained. */
	private static final double UNEXPLAINED = 0.2;
	private static final double WOULD_BE_HEARD = 0.5;
	/** In bits; nothing comes of less within a few notes (our guess). */
	private static final double WORTH_A_NOTE = 0.03;

	/** @param chances by draw of sizes how likely all that was heard is */
	private record Weighed(SortedSet<String> pads, double[] chances, double score) {

		private static final Comparator<Weighed> LIKELIEST_FIRST = Comparator.comparingDouble(Weighed::score).reversed()
				.thenComparingInt(set -> set.pads.size()).thenComparing(set -> String.join(" ", set.pads));
	}

	private final TrialNotes notes;
	private final HeardLeaks heard;
	private final SearchLimits limits;
	private final List<String> pads;
	private final Map<String, Double> odds;
	private final Map<String, double[]> sizes;
	private final Map<SortedSet<String>, double[]> told = new LinkedHashMap<>();
	private final Diagnosis diagnosis;

	private HeardSuspects(TrialNotes notes, PadWeights weights, HeardLeaks heard, SearchLimits limits) {
		this.notes = notes;
		this.heard = heard;
		this.limits = limits;
		pads = List.copyOf(suspects(notes, heard));
		sizes = heard.draws(pads);
		double total = pads.stream().mapToDouble(weights::of).sum();
		odds = new TreeMap<>();
		pads.forEach(pad -> odds.put(pad, weights.of(pad) / total));
		diagnosis = diagnose();
	}

	/**
	 * @throws IllegalArgumentException if it is not known how a note that was tried is weakened
	 */
	public static HeardSuspects of(TrialNotes notes, PadWeights weights, HeardLeaks heard, SearchLimits limits) {
		Stream.concat(notes.bad().stream(), notes.good().stream()).filter(note -> !heard.tells(note)).findFirst()
				.ifPresent(note -> {
					throw new IllegalArgumentException("it is not known how leaks weaken " + note.note());
				});
		return new HeardSuspects(notes, weights, heard, limits);
	}

	public Diagnosis diagnosis() {
		return diagnosis;
	}

	/**
	 * The note that is expected to tell most between the suspects told of, be it one that was tried and is worth another
	 * hearing; none if no note tells enough to be worth it.
	 */
	public Optional<NextNote> nextNote(List<NoteFingering> candidates) {
		return NextNote.among(candidates.stream().filter(heard::tells).toList(), diagnosis.suspects(), this::chanceBad)
				.filter(next -> next.bits() >= WORTH_A_NOTE);
	}

	private static SortedSet<String> suspects(TrialNotes notes, HeardLeaks heard) {
		SortedSet<String> pads = new TreeSet<>();
		notes.bad().forEach(note -> heard.weakening().get(note.note()).forEach((pad, share) -> {
			if (share > 0) {
				pads.add(pad);
			}
		}));
		return pads;
	}

	private Diagnosis diagnose() {
		List<Weighed> all = new ArrayList<>();
		List<Weighed> wave = pads.stream().map(pad -> weigh(new TreeSet<>(Set.of(pad)))).toList();
		for (int size = 1; size <= limits.pads() && !wave.isEmpty(); size++) {
			all.addAll(wave);
			wave = size < limits.pads() ? extended(wave) : List.of();
		}
		List<Weighed> needed = all.stream().filter(set -> all.stream().noneMatch(other -> makesNeedless(other, set)))
				.sorted(Weighed.LIKELIEST_FIRST).toList();
		double total = needed.stream().mapToDouble(Weighed::score).sum();
		List<Weighed> likely = needed.stream().filter(set -> set.score() >= LEAST_SHARE * total).toList();
		List<Weighed> listed = likely.subList(0, Math.min(limits.sets(), likely.size()));
		listed.forEach(set -> told.put(set.pads(), set.chances()));
		List<SuspectSet> suspects = listed.stream().map(set -> new SuspectSet(set.pads(), set.score() / total)).toList();
		boolean more = likely.size() > listed.size()
				|| listed.stream().anyMatch(set -> set.pads().size() == limits.pads());
		return new Diagnosis(notes, suspects, more, contradictions(suspects));
	}

	/** Whether a smaller part of a set explains all as well. */
	private static boolean makesNeedless(Weighed part, Weighed set) {
		return part.pads().size() < set.pads().size() && part.score() >= set.score() && set.pads().containsAll(part.pads());
	}

	private List<Weighed> extended(List<Weighed> wave) {
		Map<SortedSet<String>, Weighed> larger = new LinkedHashMap<>();
		wave.stream().sorted(Weighed.LIKELIEST_FIRST).limit(WIDTH).forEach(set -> pads.stream()
				.filter(pad -> !set.pads().contains(pad)).forEach(pad -> {
					SortedSet<String> members = new TreeSet<>(set.pads());
					members.add(pad);
					larger.computeIfAbsent(members, this::weigh);
				}));
		return List.copyOf(larger.values());
	}

	private Weighed weigh(SortedSet<String> members) {
		double[] chances = new double[HeardLeaks.DRAWS];
		Arrays.fill(chances, 1);
		notes.bad().forEach(note -> multiply(chances, members, note, true));
		notes.good().forEach(note -> multiply(chances, members, note, false));
		double prior = members.stream().mapToDouble(odds::get).sorted().reduce(1, (one, other) -> one * other);
		return new Weighed(members, chances, prior * Arrays.stream(chances).sum() / HeardLeaks.DRAWS);
	}

	private void multiply(double[] chances, SortedSet<String> members, NoteFingering note, boolean bad) {
		double[] badness = chancesBad(members, note);
		for (int draw = 0; draw < chances.length; draw++) {
			chances[draw] *= bad ? badness[draw] : 1 - badness[draw];
		}
	}

	/** How likely a note is called bad, by draw of sizes. */
	private double[] chancesBad(SortedSet<String> members, NoteFingering note) {
		double[] lost = new double[HeardLeaks.DRAWS];
		for (String pad : members) {
			double weakening = heard.weakening(note, pad);
			double[] size = sizes.get(pad);
			for (int draw = 0; weakening > 0 && draw < lost.length; draw++) {
				lost[draw] += size[draw] * weakening;
			}
		}
		return Arrays.stream(lost).map(heard::chanceBad).toArray();
	}

	private double chanceBad(SuspectSet set, NoteFingering note) {
		double[] chances = told.get(set.pads());
		double[] badness = chancesBad(set.pads(), note);
		double bad = 0;
		double all = 0;
		for (int draw = 0; draw < chances.length; draw++) {
			bad += chances[draw] * badness[draw];
			all += chances[draw];
		}
		return bad / all;
	}

	private List<UnexplainedNote> contradictions(List<SuspectSet> suspects) {
		return notes.bad().stream()
				.filter(bad -> suspects.stream().mapToDouble(set -> set.share() * chanceBad(set, bad)).sum() < UNEXPLAINED)
				.map(this::contradiction).toList();
	}

	private UnexplainedNote contradiction(NoteFingering bad) {
		SortedMap<String, List<String>> clearedBy = new TreeMap<>();
		pads.stream().filter(pad -> heard.weakening(bad, pad) > 0)
				.forEach(pad -> clearedBy.put(pad, notes.good().stream()
						.filter(good -> wouldBeHeard(pad, bad, good)).map(NoteFingering::note).toList()));
		return new UnexplainedNote(bad.note(), clearedBy);
	}

	/** Whether a leak that is just heard in the bad note would be heard in the good one. */
	private boolean wouldBeHeard(String pad, NoteFingering bad, NoteFingering good) {
		double justHeard = (StrictMath.pow(10, heard.ear().threshold() / 20) - 1) / heard.weakening(bad, pad);
		return heard.chanceBad(justHeard * heard.weakening(good, pad)) >= WOULD_BE_HEARD;
	}
}
