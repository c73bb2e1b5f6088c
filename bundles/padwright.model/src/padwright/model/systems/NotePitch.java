package padwright.model.systems;

import java.math.BigDecimal;

import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.NoteRemoval;

/** The pitch of a note in words: its name, and its cents where it has some, as in {@code C4 +50}. */
public final class NotePitch {

	private NotePitch() {
	}

	/** Null where the note has no name yet. */
	public static String of(Fingering fingering) {
		return of(fingering.getNote(), fingering.getCents());
	}

	static String of(NoteRemoval removal) {
		return of(removal.getNote(), removal.getCents());
	}

	private static String of(String note, BigDecimal cents) {
		if (note == null || cents == null || cents.signum() == 0) {
			return note;
		}
		return note + (cents.signum() > 0 ? " +" : " ") + cents.stripTrailingZeros().toPlainString();
	}
}
