package padwright.workup.checks;

/**
 * The code of every kind of finding, unique and stable: scripts and quick fixes rely on them. Where a quick fix needs
 * data, the comment says what the finding carries.
 */
public final class IssueCodes {

	// key systems
	public static final String SYSTEM_CYCLE = "system-cycle";
	public static final String DUPLICATE_KEY = "duplicate-key";
	public static final String NOT_INHERITED = "not-inherited";
	public static final String DRIVEN_KEY_MISSING = "driven-key-missing";
	public static final String COUPLING_CYCLE = "coupling-cycle";
	public static final String CLOSED_KEY_COUPLED = "closed-key-coupled";
	public static final String OPEN_KEY_COUPLED = "open-key-coupled";
	public static final String NUMBER_RANGE = "number-range";
	public static final String PIECE_CIRCLE = "piece-circle";
	public static final String REVISION_DATE = "revision-date";
	public static final String PLACE_TWICE = "place-twice";
	public static final String NAME_SIGNS = "name-signs";
	public static final String TOUCH_REMOVED = "touch-removed";
	public static final String TOUCH_IDLE = "touch-idle";
	public static final String ADJUSTER_THREAD = "adjuster-thread";
	public static final String ARM_SHORT = "arm-short";
	public static final String RISE_LOW = "rise-low";
	public static final String HOLE_WIDER_THAN_CUP = "hole-wider-than-cup";
	/** Data: the measure as it was probably meant. */
	public static final String UNIT_SUSPECT = "unit-suspect";
	public static final String TOO_FINE = "too-fine";
	public static final String FINGERING_CONTRADICTION = "fingering-contradiction";
	public static final String KEY_UNREACHED = "key-unreached";
	public static final String KEY_UNUSED = "key-unused";
	public static final String TOUCH_UNUSED = "touch-unused";
	public static final String NOTE_IDLE = "note-idle";
	public static final String NOTES_ALIKE = "notes-alike";

	// stock
	public static final String DUPLICATE_ARTICLE = "duplicate-article";
	public static final String DUPLICATE_SIZE = "duplicate-size";
	public static final String RANGE_EMPTY = "range-empty";
	public static final String CLIMATE_IMPOSSIBLE = "climate-impossible";
	public static final String HAZARD_UNKNOWN = "hazard-unknown";
	public static final String LAYERS_THICKER_THAN_PAD = "layers-thicker-than-pad";
	public static final String STIFFNESS_RANGE = "stiffness-range";
	public static final String LEVELLING_PER_CENT = "levelling-per-cent";
	public static final String STOCK_CYCLE = "stock-cycle";
	public static final String PREFERENCE_WEIGHT = "preference-weight";
	/** Data: the nearest property name. */
	public static final String RULE_PROPERTY_UNKNOWN = "rule-property-unknown";
	public static final String RULE_OPERATOR = "rule-operator";
	/** Data: the nearest value. */
	public static final String RULE_VALUE = "rule-value";

	// plans
	public static final String RULE_BROKEN = "rule-broken";
	public static final String DUPLICATE_SERVICE = "duplicate-service";
	public static final String HOUR_TWICE = "hour-twice";
	public static final String HOURS_OUT_OF_ORDER = "hours-out-of-order";
	public static final String HOURS_MISSING = "hours-missing";
	public static final String READING_COUNT = "reading-count";
	public static final String READING_UNKNOWN_LEAF = "reading-unknown-leaf";
	public static final String FEELERS_MISSING = "feelers-missing";
	public static final String ROUND_DATE = "round-date";
	public static final String DASH_NOT_GRADED = "dash-not-graded";
	public static final String HOURS_ALIAS = "hours-alias";
	/** Data: the piece in place that is nearest to what was meant, as it is written; nothing where there is none. */
	public static final String OUT_NOT_IN_PLACE = "out-not-in-place";
	public static final String TOO_MANY_PIECES = "too-many-pieces";
	public static final String FULL_MORE_THAN_STACK = "full-more-than-stack";
	public static final String FULL_NOT_MADE = "full-not-made";
	public static final String ROUND_AFTER_LEVEL = "round-after-level";
	public static final String ARC_EMPTY = "arc-empty";
	public static final String EMPTY_CUP_UNEVEN = "empty-cup-uneven";
	public static final String STACK_OUTSIDE_BED = "stack-outside-bed";
	/** Data: the full shims that solve the height, as they are written in the plan; empty where stock cannot. */
	public static final String STACK_HEIGHT = "stack-height";
	public static final String NO_ROOM_FOR_SHIMS = "no-room-for-shims";
	/** Data: the nearest stocked thickness. */
	public static final String FILM_NOT_STOCKED = "film-not-stocked";
	public static final String FILM_SHORT = "film-short";
	public static final String PAD_DIAMETER = "pad-diameter";
	public static final String PAD_SHORT = "pad-short";
	public static final String PAD_DEPTH = "pad-depth";
	public static final String BACKING_DIAMETER = "backing-diameter";
	public static final String BACKING_MISSING = "backing-missing";
	public static final String SPRING_WEIGHT = "spring-weight";
	public static final String TENON_TWICE = "tenon-twice";
	public static final String TENON_GAP = "tenon-gap";
	public static final String INSPECTION_WORK = "inspection-work";
	public static final String DELIVERED_OPEN = "delivered-open";
	public static final String NOT_COUPLED = "not-coupled";

	// jobs
	public static final String ENTRY_DATE = "entry-date";
	/** Data: the nearest stage of the process. */
	public static final String STAGE_UNKNOWN = "stage-unknown";
	/** Data: the nearest option that was offered. */
	public static final String OPTION_UNKNOWN = "option-unknown";
	public static final String NEXT_MORNING = "next-morning";
	public static final String PHOTO_MISSING = "photo-missing";
	public static final String LOGO_MISSING = "logo-missing";
	public static final String WARRANTY_SERVICE = "warranty-service";
	public static final String LEFT_PLAY = "left-play";
	public static final String INVOICE_NUMBER = "invoice-number";
	public static final String INVOICE_DIFFERS = "invoice-differs";
	public static final String DELIVERED_UNDONE = "delivered-undone";

	// text
	public static final String SYNTAX = "syntax";
	public static final String LINK = "link";
	public static final String KIND_MISPLACED = "kind-misplaced";
	public static final String DUPLICATE_NAME = "duplicate-name";
	public static final String UNREADABLE = "unreadable";

	private IssueCodes() {
	}
}
