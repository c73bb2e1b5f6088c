package padwright.workup.checks.systems;

import java.util.regex.Pattern;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A name has nothing inside that stands between names elsewhere, and neither begins nor ends with a blank. */
public final class NameSignsCheck extends Check<Titled> {

	private static final Pattern WRONG = Pattern.compile("[\"\\\\./\\v\\t]|^\\s|\\s$|^$");

	public NameSignsCheck() {
		super(Titled.class);
	}

	@Override
	protected void check(Titled titled, Findings findings) {
		if (titled.getName() != null && WRONG.matcher(titled.getName()).find()) {
			findings.error(IssueCodes.NAME_SIGNS, Place.of(titled, KeySystemPackage.Literals.TITLED__NAME),
					Advice.of(IssueCodes.NAME_SIGNS, titled.getName()));
		}
	}
}
