package padwright.workbench.prefs;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.ComboFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

import padwright.views.bench.BenchAction;
import padwright.views.bench.BenchKeys;
import padwright.workbench.Messages;
import padwright.workbench.indicator.SerialLines;

/** How readings are typed and read back, and what each key does in bench mode. */
public final class BenchModePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final List<String> BAUDS = List.of("1200", "2400", "4800", "9600", "19200", "38400", "57600", "115200");

	private final Map<BenchAction, Keys> keys = new EnumMap<>(BenchAction.class);

	public BenchModePage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, Preferences.NODE));
		setDescription(Messages.get("prefs.bench.about"));
	}

	@Override
	public void init(IWorkbench workbench) {
		// Nothing is asked of the workbench.
	}

	@Override
	protected void createFieldEditors() {
		addField(new BooleanFieldEditor(Preferences.IN_FULL, Messages.get("prefs.bench.inFull"), getFieldEditorParent()));
		addField(new RadioGroupFieldEditor(Preferences.READ_BACK, Messages.get("prefs.bench.readBack"), 1,
				Arrays.stream(Preferences.ReadBack.values())
						.map(way -> new String[] {Messages.get("prefs.bench.readBack." + word(way)), way.name()})
						.toArray(String[][]::new), getFieldEditorParent(), true));
		addField(new StringFieldEditor(Preferences.PORT, Messages.get("prefs.bench.port"), getFieldEditorParent()) {

			@Override
			protected void doFillIntoGrid(Composite parent, int columns) {
				super.doFillIntoGrid(parent, columns);
				getTextControl(parent).setMessage(ports());
				getTextControl(parent).setToolTipText(Messages.get("prefs.bench.port.about"));
			}
		});
		addField(new ComboFieldEditor(Preferences.BAUD, Messages.get("prefs.bench.baud"), BAUDS.stream()
				.map(baud -> new String[] {baud, baud}).toArray(String[][]::new), getFieldEditorParent()));
		for (BenchAction action : BenchAction.values()) {
			Keys field = new Keys(action);
			keys.put(action, field);
			addField(field);
		}
	}

	/** Those that are there now. */
	private static String ports() {
		String found = String.join(", ", SerialLines.ports());
		return found.isEmpty() ? Messages.get("prefs.bench.port.none") : found;
	}

	private static String word(Enum<?> word) {
		return word.name().toLowerCase(Locale.ROOT);
	}

	/** The keys of one action. No key may do two things, so all are looked at whenever one changes. */
	private final class Keys extends StringFieldEditor {

		Keys(BenchAction action) {
			super(Preferences.KEYS + action.name(), Messages.get("prefs.bench.act." + word(action)),
					getFieldEditorParent());
		}

		@Override
		protected boolean doCheckState() {
			try {
				BenchKeys.of(action -> keys.containsKey(action) ? keys.get(action).getStringValue() : "");
				return true;
			} catch (IllegalArgumentException wrong) {
				setErrorMessage(wrong.getMessage());
				return false;
			}
		}
	}
}
