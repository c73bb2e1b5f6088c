package padwright.language.validation;

/** Checks of a document as it is written. */
public class PadwrightValidator extends AbstractPadwrightValidator {
}
