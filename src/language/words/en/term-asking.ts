/** Words that ask after another word, as single words of a message. */
export const termAsking = {
	/** Follow what is asked after: "what does float mean". */
	meaning: new Set([
		"mean",
		"means",
		"meaning",
		"meant",
		"stand",
		"stands",
		"definition",
		"defined",
		"explained",
	]),
	/** Stand before it: "what is a busbar", "define float". */
	asking: new Set(
		"what whats wat wats wot wots wots is explain define meaning mean definition term word expression phrase wetin eh".split(
			" ",
		),
	),
	/** Ask what sets two of them apart. */
	apart: new Set([
		"difference",
		"diff",
		"differ",
		"differs",
		"differences",
		"vs",
		"versus",
		"v",
	]),
	/** Say nothing of it: they may stand between. */
	small: new Set(
		'a an the is are was of by in it its this that thing exactly actually even one does do did on earth hell heck called please just really then plain simple my your me to us for be been any "'.split(
			" ",
		),
	),
	/** Gear that a message names while it asks after something else: "what does float mean on my charger". */
	common: new Set([
		"amp",
		"volt",
		"watt",
		"mains charger",
		"solar panel",
		"inverter",
		"battery monitor",
		"alternator",
		"starter battery",
		"second battery",
		"lfp",
		"fridge compressor",
		"generator",
		"fuse",
		"ac",
		"solar regulator",
		"battery bank",
	]),
	/** Say nothing of a word that is not known: what is left when they are taken off is asked after. */
	idle: new Set(
		"a an the is are was what whats wat wot wots whatis does do did mean means meaning of explain define please pls plz me to us in it its this that thing even exactly actually really hell heck on earth kindly could would can you someone somebody anybody anyone tell stand stands for when people say they talk about by and so ok hey hi hello bot um er then like i my we our keep keeps hearing reading read see seeing every everyone all with word words term short simple simply plain english whats a again how works work why called call sorry dumb stupid silly question quick beginner here newbie new".split(
			" ",
		),
	),
} as const;
