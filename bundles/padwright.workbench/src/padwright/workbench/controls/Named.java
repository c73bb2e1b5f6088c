package padwright.workbench.controls;

import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Gives controls names for those who do not see the label beside them. */
public final class Named {

	private static final String KEY = "padwright.name";

	private Named() {
	}

	/** {@code control} with a name, which may hold the mark of a mnemonic. */
	public static <C extends Control> C as(String name, C control) {
		String spoken = LegacyActionTools.removeMnemonics(name);
		control.setData(KEY, spoken);
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = spoken;
			}
		});
		return control;
	}

	/** The name that a control was given; nothing for none. */
	public static String of(Control control) {
		return control.getData(KEY) instanceof String name ? name : "";
	}
}
