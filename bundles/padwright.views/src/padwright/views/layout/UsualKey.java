package padwright.views.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.language.edit.SystemWords;
import padwright.model.keysystem.HoleMake;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/** The hole and cup of a key that is drawn new: those of the nearest key, so that it fits in; else of a middling flute. */
record UsualKey(EffectiveSystem all, SystemWords words) {

	/** A flute's (invented). */
	private static final Length HOLE = Length.millimetres("13");
	private static final Length CUP = Length.millimetres("16.5");

	String like(Length along, Layout layout) {
		Optional<EffectiveKey> nearest = layout.items().stream()
				.filter(item -> item.kind() == LayoutKind.KEY && item.along().isPresent())
				.min(Comparator.comparing(item -> item.along().orElseThrow().minus(along).abs()))
				.flatMap(item -> all.keys().stream().filter(key -> key.definition() == item.thing()).findFirst());
		List<String> parts = new ArrayList<>();
		say(parts, "hole", Optional.of(nearest.flatMap(EffectiveKey::holeDiameter).orElse(HOLE)));
		say(parts, "rim", nearest.flatMap(EffectiveKey::rimWidth));
		say(parts, "chimney", nearest.flatMap(EffectiveKey::chimney));
		nearest.flatMap(EffectiveKey::holeMake).map(HoleMake::getLiteral).ifPresent(parts::add);
		say(parts, "cup", Optional.of(nearest.flatMap(EffectiveKey::cupDiameter).orElse(CUP)));
		say(parts, "deep", nearest.flatMap(EffectiveKey::cupDepth));
		return String.join(" ", parts);
	}

	private void say(List<String> parts, String word, Optional<Length> length) {
		length.ifPresent(known -> parts.add(word + " " + words.length(known)));
	}
}
