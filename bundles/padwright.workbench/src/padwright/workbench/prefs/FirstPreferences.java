package padwright.workbench.prefs;

import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;

import padwright.engine.length.LengthUnit;
import padwright.views.bench.BenchAction;

/** What is preferred before the user says anything. */
public final class FirstPreferences extends AbstractPreferenceInitializer {

	@Override
	public void initializeDefaultPreferences() {
		IEclipsePreferences first = DefaultScope.INSTANCE.getNode(Preferences.NODE);
		first.put(Preferences.TOLERANCE, Preferences.FIRST_TOLERANCE);
		first.put(Preferences.UNIT, LengthUnit.THOU.name());
		first.putInt(Preferences.TOP, Preferences.FIRST_TOP);
		first.put(Preferences.LEAST, Preferences.Least.INFO.name());
		first.putInt(Preferences.AUTOSAVE, Preferences.FIRST_AUTOSAVE);
		first.putBoolean(Preferences.IN_FULL, false);
		first.put(Preferences.READ_BACK, Preferences.ReadBack.NONE.name());
		for (BenchAction action : BenchAction.values()) {
			first.put(Preferences.KEYS + action.name(), action.firstKeys());
		}
	}
}
