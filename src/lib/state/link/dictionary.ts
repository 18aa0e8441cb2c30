/**
 * What most yards have in common, as their JSON says it: DEFLATE may refer to it as though it stood before each yard (the preset dictionary of
 * RFC 1950, section 2.2; a raw stream of RFC 1951 does not name it, so both sides must know it). What is common stands last, where referring is
 * cheapest.
 *
 * These bytes are part of the format: a link made with others cannot be read. Never change them; a better text is a new format, beside this one.
 */
const rare = [
	'"fixtures":{"set":[{"id":"walk-1/path-1","from":{"along":4.1148,"out":2.286},"at":{"along":4.572,"out":2.7432},"pinned":true},{"id":"tree-1/uplight-1",',
	'"aim":{"bearing":180,"tilt":35},"model":"","removed":true}],"added":[{"id":"light-1","target":{"kind":"bed","id":"bed-1"},"technique":"path","at":{"along":',
	'"technique":"uplight"wash"graze"step"drive"area"number","aim":{"along":6.4008,"out":3.048,"height":1.8288}',
	'"left/wash-1"right/graze-1"steps-1/step-1"drive/mouth-1"number/number-1"seating-1/area-1"front-bed/path-1"main/wash-1"front-walk/path-1","front-walk/path-2"',
	'"rules":{"path.spacing/spacing":3,"tree.offset/nearOffset":0.3,"wall.wash/offset":0.6},"done":["before-notice","supply-","trench-","set-stakes","connect-","night-"]',
	'"lamps":[{"id":"lamp-1","name":"","for":["led-"],"watts":4,"vertical":[0,5,10,15,20,25,30,35,40,45,50,55,60,65,70,75,80,85,90],"horizontal":[0],"symmetry":"rotational"quadrant"bilateral","candela":[',
	'"circuit":{"transformerVoltAmps":150,"runs":[{"id":"run-1","lamps":["],"size":12,"tap":12,"feed":"end"middle"hub","links":[{"from":"supply","to":"","via":[{"along":',
	'"measured":{"terminals/run-1":12.4},"prices":{}',
	'"timeZone":"America/Los_Angeles"America/Denver"America/New_York"Europe/London"Europe/Berlin"Europe/Paris"Australia/Sydney","currency":"EUR"GBP"CAD"AUD',
	'"units":"metres"rural"town"unsure"dark"rough"garage"storeys","eaves":2.4384,"gable":6.7056,"floor":"upper"ground","under":2.2352,"wall":"left"right"back"bright"',
	'"form":"spreading"columnar"conical"vase"weeping"multi-stem"palm","leaf":"keeps"sheds","ground":"gravel","seenFrom":"house"walk"',
	'"kind":"sleeve"bore","rail":"both"staggered"either","postsAt":1.524,"posts":true,"runOffs":[{"id":"run-off-1","at":9.144,"side":"left"}],"gates":[{"id":"gate-1","at":0}]',
	'"kind":"sign","width":0.6096"pool"spa"fountain"other","cars":true},{"id":"patio","name":"patio","outline":[{"along":',
	'"sensor":{"at":{"along":0,"out":0},"on":"post","height":1.2192,"faces":0},"hours":{"kind":"dusk-to-dawn"split","evening":"22:30","morning":"05:30"},"season":{"from":"11-01","to":"03-31","hours":',
	'"budget":{"kind":"fixtures"money"both","fixtures":12,"money":900},"owned":{"transformerVoltAmps":300,"cableSize":12,"cableLength":30.48},"lamp":"halogen","warmth":3000,"cable":"mm2"'
];
const common = [
	'{"format":"duskwright/yard","version":1,"name":"","place":{"units":"feet","location":{"name":"","latitude":41.5,"longitude":-93.6,"timeZone":"America/Chicago"},"faces":180,"surroundings":"suburb"},',
	'"house":{"sections":[{"id":"front","width":9.144,"out":0,"light":"none"},{"id":"section-2","width":4.572,"out":1.8288,"light":"soft"}],"depth":9.144,"eaves":2.7432,"finish":"light","texture":"smooth",',
	'"openings":[{"id":"front-door","kind":"door","wall":"front","along":4.2672,"width":0.9144},{"id":"window-1","kind":"window","wall":"front","along":1.2192,"width":1.8288},{"id":"garage-door","kind":"garage","wall":"front","along":10.668,"width":4.8768}],',
	'"porches":[{"id":"porch","along":3.6576,"width":2.4384,"depth":1.524,"roof":true}],"left":{"light":"none"},"right":{"light":"none"}},"lot":{"street":10.668,"left":4.572,"right":4.572},',
	'"trees":[{"id":"tree-1","name":"oak","at":{"along":2.1336,"out":6.096},"spread":4.572,"height":7.3152,"crownBase":1.8288,"trunk":0.254,"form":"round","ground":"bed","light":"soft","seenFrom":"walk"},',
	'{"id":"maple","name":"maple","at":{"along":-1.8288,"out":3.3528},"spread":0.9144,"height":3.6576,"crownBase":0.3048,"trunk":0.1524,"form":"columnar","ground":"lawn","light":"soft","seenFrom":"street"}],',
	'"walks":[{"id":"front-walk","name":"front walk","line":[{"along":4.7244,"out":10.668},{"along":4.7244,"out":0}],"curved":false,"crossings":[{"id":"joint-1","at":1.524,"kind":"joint"}],"width":1.2192,"lights":"both","rail":"none",',
	'"steps":[{"id":"steps-1","at":3.048,"treads":3,"going":0.3048}],"gates":[]}],"drives":[{"id":"drive","name":"drive","line":[{"along":12.192,"out":10.668},{"along":12.192,"out":0}],"curved":false,"crossings":[],"width":3.048,"lights":"mouth","pattern":"paired","posts":false,"runOffs":[]}],',
	'"spots":{"beds":[{"id":"front-bed","name":"front bed","outline":[{"along":0,"out":0},{"along":3.048,"out":0},{"along":3.048,"out":1.2192},{"along":0,"out":1.2192}],"light":"none"}],"paved":[],',
	'"seating":[{"id":"seating","name":"seating","at":{"along":7.9248,"out":4.8768},"across":3.048,"light":"soft"}],"numbers":[{"id":"number","at":{"along":4.8768,"out":0},"light":false}],',
	'"water":[{"id":"pond","name":"pond","kind":"pond","at":{"along":2.4384,"out":5.7912},"length":2.4384,"width":1.8288}],',
	'"lights":[{"id":"street-lamp","name":"street lamp","kind":"street-lamp","at":{"along":-3.048,"out":11.5824},"height":5.4864,"reach":4.2672},{"id":"porch-light","name":"porch light","kind":"porch-light","at":{"along":5.1816,"out":0},"height":2.1336,"reach":2.4384}],',
	'"walls":[{"id":"garden-wall","name":"garden wall","from":{"along":0,"out":0},"to":{"along":0,"out":6.096},"height":1.2192,"finish":"medium","texture":"rough","light":"soft"}]},',
	'"drives":[],"water":[],"seating":[],"porches":[],"walls":[]},"power":{"receptacle":{"along":0,"out":0},"gfci":true,"inUseCover":true,"transformer":{"at":{"along":0,"out":0},"on":"wall","height":0.4572},"sensor":"suggest",',
	'"hours":{"kind":"until","clock":"23:00"},"transformer":"suggest","sensor":"suggest","hours":{"kind":"after-dusk","hours":5},"price":{"perKwh":0.16,"currency":"USD"},"lamp":"led","warmth":2700,"cable":"awg","owned":{},"budget":{"kind":"none"}}}'
];

/** The preset dictionary of format 1, at most the 32 kB that DEFLATE looks back. */
export const dictionary: Uint8Array = new TextEncoder().encode([...rare, ...common].join(''));
