package padwright.paper.handback;

import java.util.List;

import padwright.paper.handback.HandBack.Section;
import padwright.paper.page.HeadText;

/** A hand-back page; all invented. */
public final class DemoHandBack {

	private DemoHandBack() {
	}

	public static HandBack page() {
		return new HandBack(new HeadText("Boehm flute", "serial 1", "Your instrument is back", List.of()),
				"Your instrument is back", List.of(
						new Section("What was done", List.of("17 pads were replaced.", "We found 1 torn pad: C♯.")),
						new Section("Care", List.of("Swab the instrument dry after playing. "
								+ "Let it dry before you close the case. ".repeat(4).strip()))));
	}
}
