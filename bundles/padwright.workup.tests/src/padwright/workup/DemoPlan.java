package padwright.workup;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.model.FeelerReading;
import padwright.model.Measure;
import padwright.model.Range;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.AdjusterKind;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.ToneHole;
import padwright.model.keysystem.Touch;
import padwright.model.plan.CouplingSide;
import padwright.model.plan.KeyService;
import padwright.model.plan.Piece;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.Regulation;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.model.stock.Assortment;
import padwright.model.stock.Climate;
import padwright.model.stock.Feeler;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Layer;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.stock.Stock;
import padwright.model.stock.StockFactory;
import padwright.model.stock.StockedSize;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** A small invented plan, put together step by step: read at 12 3 6 9, leaves up to 4 thou, film of 0.5, 1, 2. */
public final class DemoPlan {

	private static final KeySystemFactory KEYS = KeySystemFactory.eINSTANCE;
	private static final StockFactory STOCK = StockFactory.eINSTANCE;
	private static final PlanFactory PLANS = PlanFactory.eINSTANCE;

	public final KeySystem system = KEYS.createKeySystem();
	public final Stock stock = STOCK.createStock();
	public final Plan plan = PLANS.createPlan();
	public final Pad pad = STOCK.createPad();

	public DemoPlan() {
		system.setName("Demo");
		stock.setName("Bench");
		plan.setName("Spring");
		plan.setSystem(system);
		plan.setStock(stock);
		plan.setTolerance(Measure.valueOf("0.5 thou"));
		for (String hour : new String[] { "12", "3", "6", "9" }) {
			plan.getHours().add(ClockHour.ofHour(new BigDecimal(hour)));
		}
		pad.setName("Felt");
		pad.setStiffness(new BigDecimal("0.003"));
		stock.getPads().add(pad);
		for (String leaf : new String[] { "0.5", "1", "1.5", "2", "3", "4" }) {
			Feeler feeler = STOCK.createFeeler();
			feeler.setThickness(Measure.valueOf(leaf + " thou"));
			stock.getFeelers().add(feeler);
		}
		plan.setFitting(PLANS.createFitting());
		plan.getFitting().setPad(pad);
		plan.getFitting().setFilms(film("0.5 1 2"));
	}

	private FilmSet film(String thou) {
		FilmSet films = STOCK.createFilmSet();
		films.setName("Clear");
		Assortment sizes = STOCK.createAssortment();
		for (String size : thou.split(" ")) {
			StockedSize stocked = STOCK.createStockedSize();
			stocked.setSize(new BigDecimal(size));
			sizes.getSizes().add(stocked);
		}
		films.setThicknesses(sizes);
		stock.getFilms().add(films);
		return films;
	}

	/** An open key over a hole of 13 mm with a rim of 1 mm. */
	public Key key(String name) {
		Key key = KEYS.createKey();
		key.setName(name);
		ToneHole hole = KEYS.createToneHole();
		hole.setDiameter(Measure.valueOf("13 mm"));
		hole.setRimWidth(Measure.valueOf("1 mm"));
		key.setHole(hole);
		system.getKeys().add(key);
		return key;
	}

	public Adjuster adjuster(AdjusterKind kind) {
		Adjuster adjuster = KEYS.createAdjuster();
		adjuster.setKind(kind);
		return adjuster;
	}

	public Adjuster screw(String thread) {
		Adjuster screw = adjuster(AdjusterKind.SCREW);
		screw.setThread(thread);
		return screw;
	}

	public void couple(Key driver, Key driven, Adjuster adjuster) {
		Coupling coupling = KEYS.createCoupling();
		coupling.setDriven(driven);
		coupling.setAdjuster(adjuster);
		driver.getCloses().add(coupling);
	}

	/** A fingering that presses keys; {@code label} may be null. */
	public Fingering note(String name, String label, Key... pressed) {
		Fingering fingering = KEYS.createFingering();
		fingering.setNote(name);
		fingering.setLabel(label);
		List.of(pressed).forEach(key -> press(fingering, touch(key)));
		system.getFingerings().add(fingering);
		return fingering;
	}

	/** The touch that presses a key, called like it. */
	public Touch touch(Key key) {
		if (key.getTouches().isEmpty()) {
			Touch touch = KEYS.createTouch();
			touch.setName(key.getName());
			((KeySystem) key.eContainer()).getTouches().add(touch);
			key.getTouches().add(touch);
		}
		return key.getTouches().get(0);
	}

	public void press(Fingering fingering, Touch touch) {
		Press press = KEYS.createPress();
		press.setTouch(touch);
		fingering.getPresses().add(press);
	}

	public KeyService row(Key key) {
		KeyService row = PLANS.createKeyService();
		row.setKey(key);
		plan.getKeys().add(row);
		return row;
	}

	/** Adds a round; readings as they are written, as in {@code . 0.5 1 .}. */
	public Round felt(KeyService row, String readings) {
		Round round = PLANS.createRound();
		Arrays.stream(readings.split(" ")).map(FeelerReading::valueOf).forEach(round.getReadings()::add);
		row.getRounds().add(round);
		return round;
	}

	public void shim(Round round, String thou, String from, String to) {
		Piece piece = PLANS.createPiece();
		piece.setThickness(Measure.valueOf(thou + " thou"));
		piece.setFrom(ClockHour.ofHour(new BigDecimal(from)));
		piece.setTo(ClockHour.ofHour(new BigDecimal(to)));
		round.getPieces().add(piece);
	}

	/** A row of thicknesses in thou, as in {@code 15 15 15 15}. */
	public ThicknessRow thicknesses(String thou) {
		ThicknessRow row = PLANS.createThicknessRow();
		Arrays.stream(thou.split(" ")).map(BigDecimal::new).forEach(row.getValues()::add);
		return row;
	}

	public void light(Key driver, Key driven, String thou, CouplingSide side) {
		Regulation note = PLANS.createRegulation();
		note.setDriver(driver);
		note.setDriven(driven);
		note.setLight(Measure.valueOf(thou + " thou"));
		note.setSide(side);
		plan.getRegulations().add(note);
	}

	/** A material; ranges as they are written, or null where nothing is known. */
	public Material material(String name, String expands, String swells) {
		Material material = STOCK.createMaterial();
		material.setName(name);
		material.setExpands(expands == null ? null : Range.valueOf(expands));
		material.setSwells(swells == null ? null : Range.valueOf(swells));
		stock.getMaterials().add(material);
		return material;
	}

	public void layer(LayerRole role, Material material, String thou) {
		Layer layer = STOCK.createLayer();
		layer.setRole(role);
		layer.setMaterial(material);
		layer.setThickness(Measure.valueOf(thou + " thou"));
		pad.getLayers().add(layer);
	}

	public void backing(Material material, String thou) {
		Backing disc = STOCK.createBacking();
		disc.setName("Disc");
		disc.setMaterial(material);
		disc.setThickness(Measure.valueOf(thou + " thou"));
		stock.getBackings().add(disc);
		plan.getFitting().setBacking(disc);
	}

	public Climate climate(String celsius, String humidity) {
		Climate climate = STOCK.createClimate();
		climate.setTemperature(new BigDecimal(celsius));
		climate.setHumidity(new BigDecimal(humidity));
		return climate;
	}

	public void player(String name, String date) {
		plan.setDate(LocalDate.parse(date));
		plan.setPlayer(PLANS.createPlayer());
		plan.getPlayer().setName(name);
	}

	public ServicePlan service() {
		return new ServicePlan(plan);
	}

	public PlanSolution solved() {
		return PlanSolver.solve(service(), WrittenAnswers.KEEP, job -> { });
	}
}
