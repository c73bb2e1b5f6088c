package padwright.language.merge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Merges parts with the same key, and what they consist of. */
final class PartMerge {

	private final String lineEnd;
	private int conflicts;

	PartMerge(String lineEnd) {
		this.lineEnd = lineEnd;
	}

	/** How many places were marked. */
	int conflicts() {
		return conflicts;
	}

	/** The text of the merged document, with marks. */
	String document(Part base, Part ours, Part theirs) {
		String merged = marked(part(base, ours, theirs), "");
		return merged.endsWith(ConflictMarks.THEIRS) ? merged + lineEnd : merged;
	}

	private Sides part(Part base, Part ours, Part theirs) {
		if (ours == null || theirs == null) {
			return base == null ? added(ours, theirs) : removed(base, ours, theirs);
		}
		if (base == null) {
			return ours.words().equals(theirs.words()) ? Sides.both(ours.text())
					: new Sides(ours.text(), theirs.text());
		}
		Sides body = ours.parts().isEmpty() || theirs.parts().isEmpty() || base.parts().isEmpty()
				? Sides.of(base.body(), ours.body(), theirs.body()) : parts(base, ours, theirs);
		return Sides.of(base.lead(), ours.lead(), theirs.lead()).then(body)
				.then(Sides.of(base.tail(), ours.tail(), theirs.tail()));
	}

	private static Sides added(Part ours, Part theirs) {
		return ours == null && theirs == null ? Sides.NOTHING : Sides.both((ours == null ? theirs : ours).text());
	}

	private static Sides removed(Part base, Part ours, Part theirs) {
		Part left = ours == null ? theirs : ours;
		if (left == null || left.words().equals(base.words())) {
			return Sides.NOTHING;
		}
		return ours == null ? new Sides("", theirs.text()) : new Sides(ours.text(), "");
	}

	private Sides parts(Part base, Part ours, Part theirs) {
		Map<String, Part> before = base.byKey();
		Map<String, Part> first = ours.byKey();
		Map<String, Part> second = theirs.byKey();
		Optional<List<String>> order = Order.of(before, first, second);
		if (order.isEmpty()) {
			return new Sides(ours.body(), theirs.body());
		}
		Sides text = Sides.NOTHING;
		for (String key : order.get()) {
			Sides next = part(before.get(key), first.get(key), second.get(key));
			text = ours.block() ? Sides.both(marked(next, text.ours())) : text.then(next);
		}
		return text;
	}

	/** All text so far, with the next behind it, between marks where the sides do not agree. */
	private String marked(Sides next, String before) {
		boolean behindMarks = before.endsWith(ConflictMarks.THEIRS);
		if (next.agree()) {
			String gap = behindMarks && !next.ours().isEmpty() && !Joint.startsALine(next.ours()) ? lineEnd : "";
			return gap.isEmpty() ? Joint.join(before, next.ours()) : before + gap + next.ours();
		}
		conflicts++;
		return before + (behindMarks ? lineEnd : "") + ConflictMarks.write(next,
				behindMarks ? lineEnd : before, lineEnd);
	}
}
