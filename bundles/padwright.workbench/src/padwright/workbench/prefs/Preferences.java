package padwright.workbench.prefs;

import java.time.Duration;
import java.util.Arrays;
import java.util.Set;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.lsp4j.DiagnosticSeverity;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.views.Shown;
import padwright.views.bench.BenchKeys;

/** What the user prefers, and what holds where nothing is said. */
public final class Preferences {

	/** The bundle that they are kept for. */
	public static final String NODE = "padwright.workbench";

	private static final String REMEMBERED = "remembered.";

	/** How often unsaved texts are kept, in seconds. */
	public static final String AUTOSAVE = "autosave.seconds";

	static final String TOLERANCE = "newPlan.tolerance";
	static final String LEAST = "problems.least";
	static final String UNIT = "shown.unit";
	static final String TOP = "shown.top";
	static final String IN_FULL = "readings.inFull";
	static final String READ_BACK = "benchMode.readBack";
	static final String PORT = "benchMode.indicator.port";
	static final String BAUD = "benchMode.indicator.baud";
	static final int FIRST_BAUD = 9600;
	static final String KEYS = "benchMode.keys.";
	static final String FIRST_TOLERANCE = "0.5";
	static final int FIRST_TOP = 12;
	static final int FIRST_AUTOSAVE = 30;

	private Preferences() {
	}

	/** Widest gap that passes, for plans that are begun. */
	public static Length tolerance() {
		try {
			return Length.thou(value(TOLERANCE, FIRST_TOLERANCE));
		} catch (ArithmeticException | NumberFormatException spoilt) {
			return Length.thou(FIRST_TOLERANCE);
		}
	}

	/** Whether findings of a severity are shown. */
	public static boolean shows(DiagnosticSeverity severity) {
		return switch (value(LEAST, Least.INFO.name())) {
			case "ERROR" -> severity == DiagnosticSeverity.Error;
			case "WARNING" -> severity == DiagnosticSeverity.Error || severity == DiagnosticSeverity.Warning;
			default -> true;
		};
	}

	/** Has lengths and clocks shown as preferred now. */
	public static void applyShown() {
		Shown.setUnit(known(LengthUnit.values(), UNIT, LengthUnit.THOU));
		int top = Platform.getPreferencesService().getInt(NODE, TOP, FIRST_TOP, null);
		Shown.setTop(new ClockHour(0).plusHalfHours(2 * (top % FIRST_TOP)));
		Shown.setTypedInFull(Platform.getPreferencesService().getBoolean(NODE, IN_FULL, false, null));
	}

	/** How long unsaved texts wait to be kept; a second or more. */
	public static Duration autosaveInterval() {
		return Duration.ofSeconds(Math.max(1, Platform.getPreferencesService().getInt(NODE, AUTOSAVE, FIRST_AUTOSAVE, null)));
	}

	/** How what is typed in bench mode is read back. */
	public static ReadBack readBack() {
		return known(ReadBack.values(), READ_BACK, ReadBack.NONE);
	}

	/** The serial port that a digital indicator sends its readings to; empty for none. */
	public static String indicatorPort() {
		return value(PORT, "").strip();
	}

	/** How fast that port is, in bits a second. */
	public static int indicatorBaud() {
		int baud = Platform.getPreferencesService().getInt(NODE, BAUD, FIRST_BAUD, null);
		return baud > 0 ? baud : FIRST_BAUD;
	}

	/** What each key does in bench mode; as at first where what was said cannot be. */
	public static BenchKeys benchKeys() {
		try {
			return BenchKeys.of(action -> value(KEYS + action.name(), action.firstKeys()));
		} catch (IllegalArgumentException spoilt) {
			return BenchKeys.standard();
		}
	}

	private static <E extends Enum<E>> E known(E[] values, String key, E otherwise) {
		String said = value(key, otherwise.name());
		return Arrays.stream(values).filter(value -> value.name().equals(said)).findFirst().orElse(otherwise);
	}

	/** Has what changes counted at once, and calls {@code changed}, whenever lengths or clocks are to be shown anew. */
	public static void onShown(Runnable changed) {
		onChange(Set.of(UNIT, TOP, IN_FULL), () -> {
			applyShown();
			changed.run();
		});
	}

	/** Calls {@code changed} whenever the severities that are shown change. */
	public static void onShownSeverities(Runnable changed) {
		onChange(Set.of(LEAST), changed);
	}

	private static void onChange(Set<String> keys, Runnable changed) {
		InstanceScope.INSTANCE.getNode(NODE)
				.addPreferenceChangeListener((IEclipsePreferences.PreferenceChangeEvent change) -> {
					if (keys.contains(change.getKey())) {
						changed.run();
					}
				});
	}

	/** What was typed into a field last; nothing for none. */
	public static String remembered(String field) {
		return value(REMEMBERED + field, "");
	}

	/** Keeps what was typed into a field for the next time. */
	public static void remember(String field, String typed) {
		InstanceScope.INSTANCE.getNode(NODE).put(REMEMBERED + field, typed);
	}

	private static String value(String key, String otherwise) {
		return Platform.getPreferencesService().getString(NODE, key, otherwise, null);
	}

	/** Ways to read back what was typed. */
	public enum ReadBack {
		NONE, TONE, VOICE
	}

	/** The least severe findings that are shown. */
	enum Least {
		ERROR, WARNING, INFO
	}
}
