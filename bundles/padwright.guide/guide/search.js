// Finds words in all pages of one language. The words come as a script beside the page, so that no server is needed.
"use strict";
(() => {
	const SHOWN = 12;
	const HEADING = 8;
	const TITLE = 4;
	const TEXT = 1;
	const BEFORE = 50;
	const EXCERPT = 160;
	const place = document.getElementById("search");

	/** Without case and accents. */
	const fold = text => text.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/g, "").replace(/\u00df/g, "ss");

	/** A whole word counts most, then the beginning of one, then its inside: parts of German words are words. */
	function weight(text, word) {
		let best = 0;
		for (let at = text.indexOf(word); at >= 0 && best < 3; at = text.indexOf(word, at + 1)) {
			const begins = at === 0 || !/[\p{L}\p{N}]/u.test(text[at - 1]);
			const ends = !/[\p{L}\p{N}]/u.test(text.charAt(at + word.length));
			best = Math.max(best, begins && ends ? 3 : begins ? 2 : 1);
		}
		return best;
	}

	const sections = WORDS.map(([page, id, title, heading, text]) => ({
		target: id ? page + "#" + id : page, title, heading, text,
		foldedTitle: fold(title), foldedHeading: fold(heading), foldedText: fold(text)
	}));

	/** 0 where a word is missing. */
	function worth(section, words) {
		let sum = 0;
		for (const word of words) {
			const found = HEADING * weight(section.foldedHeading, word) + TITLE * weight(section.foldedTitle, word)
				+ TEXT * weight(section.foldedText, word);
			if (found === 0) {
				return 0;
			}
			sum += found;
		}
		return sum;
	}

	function find(query) {
		const words = fold(query).split(/\s+/).filter(word => word);
		const found = words.length === 0 ? [] : sections.map(section => ({ section, worth: worth(section, words) }))
			.filter(hit => hit.worth > 0).sort((one, other) => other.worth - one.worth).slice(0, SHOWN);
		return { words, sections: found.map(hit => hit.section) };
	}

	function excerpt(section, words) {
		const first = Math.min(...words.map(word => section.foldedText.indexOf(word)).filter(at => at >= 0), Infinity);
		const begin = first === Infinity ? 0 : section.text.lastIndexOf(" ", Math.max(0, first - BEFORE)) + 1;
		const line = document.createElement("p");
		for (const part of section.text.slice(begin, begin + EXCERPT).replace(/\s\S*$/, "").split(/(\s+)/)) {
			const marked = words.some(word => fold(part).includes(word));
			line.append(marked ? Object.assign(document.createElement("mark"), { textContent: part }) : part);
		}
		line.append(" \u2026");
		return line;
	}

	function line(section, words) {
		const link = document.createElement("a");
		link.href = section.target;
		link.textContent = section.heading === section.title ? section.title : section.title + ": " + section.heading;
		const item = document.createElement("li");
		item.append(link, excerpt(section, words));
		return item;
	}

	const list = document.createElement("ol");
	const field = Object.assign(document.createElement("input"), {
		type: "search", placeholder: place.dataset.label, ariaLabel: place.dataset.label
	});
	field.addEventListener("input", () => {
		const { words, sections: found } = find(field.value);
		list.replaceChildren(...found.map(section => line(section, words)));
		if (words.length > 0 && found.length === 0) {
			list.append(Object.assign(document.createElement("li"), { textContent: place.dataset.none }));
		}
	});
	field.addEventListener("keydown", event => {
		if (event.key === "Enter" && list.querySelector("a")) {
			location.href = list.querySelector("a").href;
		} else if (event.key === "Escape") {
			field.value = "";
			list.replaceChildren();
		}
	});
	list.setAttribute("aria-live", "polite");
	place.append(field, list);
})();
