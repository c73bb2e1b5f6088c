package padwright.workbench.prefs;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.lsp4j.DiagnosticSeverity;

import padwright.engine.length.Length;

/** What the user prefers, and what holds where nothing is said. */
public final class Preferences {

	/** The bundle that they are kept for. */
	public static final String NODE = "padwright.workbench";

	static final String TOLERANCE = "newPlan.tolerance";
	static final String LEAST = "problems.least";
	static final String FIRST_TOLERANCE = "0.5";

	private Preferences() {
	}

	/** Widest spread that passes, for plans that are begun. */
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

	/** Calls {@code changed} whenever the severities that are shown change. */
	public static void onShownSeverities(Runnable changed) {
		InstanceScope.INSTANCE.getNode(NODE)
				.addPreferenceChangeListener((IEclipsePreferences.PreferenceChangeEvent change) -> {
					if (change.getKey().equals(LEAST)) {
						changed.run();
					}
				});
	}

	private static String value(String key, String otherwise) {
		return Platform.getPreferencesService().getString(NODE, key, otherwise, null);
	}

	/** The least severe findings that are shown. */
	enum Least {
		ERROR, WARNING, INFO
	}
}
