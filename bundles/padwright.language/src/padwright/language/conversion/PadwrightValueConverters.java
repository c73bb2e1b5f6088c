package padwright.language.conversion;

import org.eclipse.xtext.common.services.DefaultTerminalConverters;

/** Between the words of the text and the values of the model. */
public class PadwrightValueConverters extends DefaultTerminalConverters {
}
