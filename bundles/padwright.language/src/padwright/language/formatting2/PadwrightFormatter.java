package padwright.language.formatting2;

import org.eclipse.xtext.formatting2.AbstractJavaFormatter;

/** The layout of a document. */
public class PadwrightFormatter extends AbstractJavaFormatter {
}
