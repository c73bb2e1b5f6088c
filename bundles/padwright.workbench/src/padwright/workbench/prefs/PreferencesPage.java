package padwright.workbench.prefs;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.IntegerFieldEditor;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workbench.Messages;

/** What the user prefers. */
public final class PreferencesPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int SHORTEST = 5;
	private static final int LONGEST = 3600;
	private static final List<String> HOURS = List.of("12", "3", "6", "9");

	public PreferencesPage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, Preferences.NODE));
		setDescription(Messages.get("prefs.about"));
	}

	@Override
	public void init(IWorkbench workbench) {
		// Nothing is asked of the workbench.
	}

	@Override
	protected void createFieldEditors() {
		addField(radio(Preferences.UNIT, "prefs.unit", 1, choices("prefs.unit.", LengthUnit.values())));
		addField(radio(Preferences.TOP, "prefs.top", HOURS.size(), HOURS.stream()
				.map(hour -> new String[] {Messages.get("prefs.top.hour", hour), hour}).toArray(String[][]::new)));
		addField(new Tolerance());
		addField(radio(Preferences.LEAST, "prefs.least", 1, choices("prefs.least.", Preferences.Least.values())));
		IntegerFieldEditor seconds = new IntegerFieldEditor(Preferences.AUTOSAVE, Messages.get("prefs.autosave"),
				getFieldEditorParent());
		seconds.setValidRange(SHORTEST, LONGEST);
		addField(seconds);
	}

	private RadioGroupFieldEditor radio(String preference, String title, int columns, String[][] choices) {
		return new RadioGroupFieldEditor(preference, Messages.get(title), columns, choices, getFieldEditorParent(), true);
	}

	private static String[][] choices(String words, Enum<?>[] values) {
		return Arrays.stream(values)
				.map(value -> new String[] {Messages.get(words + value.name().toLowerCase(Locale.ROOT)), value.name()})
				.toArray(String[][]::new);
	}

	/** A figure in thou. */
	private final class Tolerance extends StringFieldEditor {

		Tolerance() {
			super(Preferences.TOLERANCE, Messages.get("prefs.tolerance"), getFieldEditorParent());
			setErrorMessage(Messages.get("prefs.tolerance.fault"));
			setEmptyStringAllowed(false);
		}

		@Override
		protected boolean doCheckState() {
			try {
				return Length.of(new BigDecimal(getStringValue().strip()), LengthUnit.THOU).signum() > 0;
			} catch (NumberFormatException | ArithmeticException noLength) {
				return false;
			}
		}
	}
}
