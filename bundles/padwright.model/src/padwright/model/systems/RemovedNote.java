package padwright.model.systems;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.NoteRemoval;

/** Takes the fingerings of a note away, or the one of a label. */
record RemovedNote(NoteRemoval removal) {

	void takeFrom(Map<String, List<Fingering>> fingerings) {
		String note = NotePitch.of(removal);
		if (removal.getLabel() == null) {
			fingerings.remove(note);
			return;
		}
		fingerings.computeIfPresent(note, (pitch, all) -> {
			List<Fingering> left = new ArrayList<>(all);
			left.removeIf(fingering -> removal.getLabel().equals(fingering.getLabel()));
			return left.isEmpty() ? null : left;
		});
	}
}
