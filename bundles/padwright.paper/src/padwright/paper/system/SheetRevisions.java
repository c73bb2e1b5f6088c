package padwright.paper.system;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Revision;
import padwright.paper.sheet.SheetList;
import padwright.paper.words.Messages;
import padwright.workup.words.Days;

/** The revisions of a system, counted from 1. */
final class SheetRevisions {

	private SheetRevisions() {
	}

	static SheetList table(KeySystem system) {
		List<Revision> revisions = system.getRevisions();
		return new SheetList(Messages.of("sheet.revisions"), List.of(Messages.of("sheet.number"), Messages.of("sheet.day"),
				Messages.of("sheet.changed"), Messages.of("sheet.by")),
				IntStream.range(0, revisions.size())
						.mapToObj(index -> row(String.valueOf(index + 1), revisions.get(index))).toList());
	}

	private static List<String> row(String number, Revision revision) {
		return List.of(number, Optional.ofNullable(revision.getDate()).map(Days::of).orElse(""), Objects.toString(revision.getChanged(), ""),
				Objects.toString(revision.getAuthor(), ""));
	}

	/** What the head says of the last one; empty without any. */
	static Optional<String> last(KeySystem system) {
		int count = system.getRevisions().size();
		return count == 0 ? Optional.empty() : Optional.of(String.valueOf(count));
	}

	/** The day of the last one; empty without any. */
	static Optional<String> day(KeySystem system) {
		int count = system.getRevisions().size();
		return count == 0 ? Optional.empty()
				: Optional.ofNullable(system.getRevisions().get(count - 1).getDate()).map(Days::of);
	}
}
