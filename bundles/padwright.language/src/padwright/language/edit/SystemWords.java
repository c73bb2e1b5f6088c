package padwright.language.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.resource.XtextResource;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;

/** Parts of a key system as they are written in its text: names quoted where they must be, lengths in its unit. */
public final class SystemWords {

	private final EObject context;
	private final IValueConverterService values;

	public SystemWords(KeySystem system) {
		context = system;
		values = ((XtextResource) system.eResource()).getResourceServiceProvider().get(IValueConverterService.class);
	}

	/** The name of something of a system. */
	public String name(Titled thing) {
		return values.toString(thing.getName(), thing instanceof Joint ? "JointName" : "Name");
	}

	/** A name that others will refer to. */
	public String name(String name) {
		return values.toString(name, "Name");
	}

	/** A text in quotation marks. */
	public String quoted(String text) {
		return values.toString(text, "STRING");
	}

	/** In the unit of the document where that is metric and exact, else in millimetres. */
	public String length(Length length) {
		LengthUnit unit = Lengths.documentUnit(context);
		return Optional.of(unit).filter(metric -> metric != LengthUnit.THOU)
				.flatMap(metric -> LengthText.number(length, metric))
				.orElseGet(() -> LengthText.number(length, LengthUnit.MILLIMETRE).orElseThrow() + " mm");
	}

	/** As in {@code -12.5}. */
	public static String number(BigDecimal number) {
		return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
	}

	/** A coupling as another system says it. */
	String coupling(Coupling coupling) {
		List<String> words = new ArrayList<>(List.of(name(coupling.getDriven())));
		if (coupling.getAdjuster() != null) {
			words.add("through " + adjuster(coupling.getAdjuster()));
		}
		if (coupling.getRatio() != null) {
			words.add("ratio " + number(coupling.getRatio()));
		}
		Lengths.of(coupling.getPlay(), coupling).ifPresent(play -> words.add("play " + length(play)));
		if (coupling.getCondition() != null) {
			words.add("when " + name(coupling.getCondition()) + " is " + (coupling.isUnpressed() ? "not " : "")
					+ "pressed");
		}
		return String.join(" ", words);
	}

	private String adjuster(Adjuster adjuster) {
		String thread = adjuster.getThread() == null ? "" : " " + quoted(adjuster.getThread());
		return adjuster.getKind().getLiteral() + thread
				+ Lengths.of(adjuster.getPitch(), adjuster).map(pitch -> " pitch " + length(pitch)).orElse("");
	}
}
