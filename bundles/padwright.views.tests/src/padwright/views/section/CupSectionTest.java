package padwright.views.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Text;
import padwright.engine.length.Length;
import padwright.views.Bench;
import padwright.views.Figures;
import padwright.views.Palette;
import padwright.views.scenes.Targets;
import padwright.workup.service.KeyJob;

class CupSectionTest {

	static Stream<KeyJob> rows() {
		return Bench.examples().stream().flatMap(plan -> plan.jobs().stream().limit(3));
	}

	private static CupSectionState section(String row) {
		return CupSectionState.of(new Bench(row).row("A"));
	}

	private static Length sum(Stream<Length> lengths) {
		return lengths.reduce(Length.ZERO, Length::plus);
	}

	@Test
	void whatIsMissingIsWhatTheEquationWantsLessWhatIsNoted() {
		CupSectionState section = section("key A empty 15 15 15 15 stack 7.5 5");
		// depth 2.95 mm + gap 15 + sinks 2 − disc 20 − pad 98 thou
		Length target = Length.millimetres("2.95").minus(Length.thou("101"));
		assertEquals(Optional.of(target), section.target());
		assertEquals(Optional.of(target.minus(Length.thou("12.5"))), section.missing());
		assertTrue(section.isOff());
		assertEquals(List.of(SectionLayer.Kind.BACKING, SectionLayer.Kind.SHIM, SectionLayer.Kind.SHIM,
				SectionLayer.Kind.BASE, SectionLayer.Kind.PAD),
				section.layers().stream().map(SectionLayer::kind).toList());
	}

	@Test
	void roomIsShownForShimsToCome() {
		CupSectionState section = section("key A empty 15 15 15 15");
		assertEquals(SectionLayer.Kind.MISSING_SHIMS, section.layers().get(1).kind());
		assertEquals(section.target(), Optional.of(section.layers().get(1).thickness()));
		assertEquals(Optional.empty(), section.missing());
		assertFalse(section.isOff());
	}

	@Test
	void anUnmeasuredCupAsksForTheMeasure() {
		CupSectionState section = section("key A");
		assertEquals(Optional.empty(), section.target());
		assertFalse(section.note().isEmpty());
	}

	@ParameterizedTest
	@MethodSource("rows")
	void termsSumToTheTargetAndLayersAreToScale(KeyJob job) {
		CupSectionState section = CupSectionState.of(job);
		section.target().ifPresent(target -> assertEquals(target, sum(section.terms().stream().map(Term::length))));
		for (double exaggeration : new double[] { 1, 5 }) {
			Scene scene = CupSectionScene.draw(section, Palette.light(), exaggeration, 2);
			Targets targets = Targets.of(scene);
			IntStream.range(0, section.layers().size()).forEach(index -> assertEquals(
					Figures.mm(section.layers().get(index).thickness()) * exaggeration,
					targets.named("layer-" + index).orElseThrow().bounds().height(), 1e-6));
		}
	}

	@Test
	void aContentThatReachesTheRimEndsAsFarBelowItAsItShallSink() {
		Bench bench = new Bench("key A empty 15 15 15 15");
		CupSectionState section = CupSectionState.of(bench.row("A"));
		Targets targets = Targets.of(CupSectionScene.draw(section, Palette.light(), 4, 2));
		double face = targets.named("layer-" + (section.layers().size() - 1)).orElseThrow().bounds().bottom();
		double rim = targets.named("rim").orElseThrow().bounds().top();
		assertEquals(4 * Figures.mm(Length.thou("2")), face - rim, 1e-6);
	}

	/** Of all widths that a window may give it, pixels, 300 high. */
	@Test
	void noTwoTextsMeetHoweverNarrow() {
		Bench bench = new Bench("key A empty 15 15 15 15 stack 7.5 5 1 0.5");
		for (double exaggeration : new double[] {1, 3, 20}) {
			for (int width = 150; width <= 800; width += 25) {
				Scene scene = CupSectionScene.draw(CupSectionState.of(bench.row("A")), Palette.light(), exaggeration,
						width / 300.0);
				List<Bounds> texts = texts(scene.elements(), 0, 0);
				assertTrue(texts.size() > 8);
				for (int one = 0; one < texts.size(); one++) {
					for (int other = one + 1; other < texts.size(); other++) {
						assertFalse(texts.get(one).overlaps(texts.get(other)),
								texts.get(one) + " meets " + texts.get(other) + " at " + width + " px");
					}
				}
			}
		}
	}

	/** Where letters stand; groups are only shifted. */
	private static List<Bounds> texts(List<Element> elements, double x, double y) {
		List<Bounds> texts = new ArrayList<>();
		for (Element element : elements) {
			if (element instanceof Text text) {
				double wide = new DejaVuMetrics().width(text.text(), text.face(), text.size());
				texts.add(new Bounds(x + text.x() - text.anchor().fraction() * wide, y + text.baseline() - text.size() * 0.7,
						wide, text.size() * 0.7));
			} else if (element instanceof Group group) {
				texts.addAll(texts(group.elements(), x + group.transform().xOf(0, 0), y + group.transform().yOf(0, 0)));
			}
		}
		return texts;
	}

	@Test
	void nothingChosenIsSaid() {
		assertEquals(List.of(), Targets.of(CupSectionScene.draw(CupSectionState.empty(), Palette.dark(), 1, 1)).all());
	}
}
