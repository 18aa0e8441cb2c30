/**
 * Places on earth to start from, one per kind of sky rather than a gazetteer: for the sun a tenth of a degree (some
 * 11 km) moves sunset by half a minute at most at home latitudes. Coordinates are of the centre of each town, to a hundredth of
 * a degree, from memory; time zones are IANA names.
 */
export interface PlaceOnEarth {
	name: string;
	latitude: number;
	longitude: number;
	timeZone: string;
}
const table: [string, number, number, string][] = [
	['Albuquerque, New Mexico', 35.08, -106.65, 'America/Denver'],
	['Anchorage, Alaska', 61.22, -149.9, 'America/Anchorage'],
	['Atlanta, Georgia', 33.75, -84.39, 'America/New_York'],
	['Auckland, New Zealand', -36.85, 174.76, 'Pacific/Auckland'],
	['Austin, Texas', 30.27, -97.74, 'America/Chicago'],
	['Barcelona, Spain', 41.39, 2.17, 'Europe/Madrid'],
	['Bengaluru, India', 12.97, 77.59, 'Asia/Kolkata'],
	['Berlin, Germany', 52.52, 13.4, 'Europe/Berlin'],
	['Boise, Idaho', 43.62, -116.2, 'America/Boise'],
	['Boston, Massachusetts', 42.36, -71.06, 'America/New_York'],
	['Brisbane, Australia', -27.47, 153.03, 'Australia/Brisbane'],
	['Calgary, Alberta', 51.05, -114.07, 'America/Edmonton'],
	['Cape Town, South Africa', -33.92, 18.42, 'Africa/Johannesburg'],
	['Charlotte, North Carolina', 35.23, -80.84, 'America/New_York'],
	['Chicago, Illinois', 41.88, -87.63, 'America/Chicago'],
	['Columbus, Ohio', 39.96, -83.0, 'America/New_York'],
	['Dallas, Texas', 32.78, -96.8, 'America/Chicago'],
	['Denver, Colorado', 39.74, -104.99, 'America/Denver'],
	['Detroit, Michigan', 42.33, -83.05, 'America/Detroit'],
	['Dublin, Ireland', 53.35, -6.26, 'Europe/Dublin'],
	['Edinburgh, Scotland', 55.95, -3.19, 'Europe/London'],
	['Halifax, Nova Scotia', 44.65, -63.57, 'America/Halifax'],
	['Helsinki, Finland', 60.17, 24.94, 'Europe/Helsinki'],
	['Honolulu, Hawaii', 21.31, -157.86, 'Pacific/Honolulu'],
	['Houston, Texas', 29.76, -95.37, 'America/Chicago'],
	['Indianapolis, Indiana', 39.77, -86.16, 'America/Indiana/Indianapolis'],
	['Johannesburg, South Africa', -26.2, 28.05, 'Africa/Johannesburg'],
	['Kansas City, Missouri', 39.1, -94.58, 'America/Chicago'],
	['Kraków, Poland', 50.06, 19.94, 'Europe/Warsaw'],
	['Las Vegas, Nevada', 36.17, -115.14, 'America/Los_Angeles'],
	['Lisbon, Portugal', 38.72, -9.14, 'Europe/Lisbon'],
	['London, England', 51.51, -0.13, 'Europe/London'],
	['Los Angeles, California', 34.05, -118.24, 'America/Los_Angeles'],
	['Lyon, France', 45.76, 4.84, 'Europe/Paris'],
	['Manchester, England', 53.48, -2.24, 'Europe/London'],
	['Melbourne, Australia', -37.81, 144.96, 'Australia/Melbourne'],
	['Mexico City, Mexico', 19.43, -99.13, 'America/Mexico_City'],
	['Miami, Florida', 25.76, -80.19, 'America/New_York'],
	['Milan, Italy', 45.46, 9.19, 'Europe/Rome'],
	['Minneapolis, Minnesota', 44.98, -93.27, 'America/Chicago'],
	['Montréal, Québec', 45.5, -73.57, 'America/Toronto'],
	['Munich, Germany', 48.14, 11.58, 'Europe/Berlin'],
	['Nashville, Tennessee', 36.16, -86.78, 'America/Chicago'],
	['New Orleans, Louisiana', 29.95, -90.07, 'America/Chicago'],
	['New York, New York', 40.71, -74.01, 'America/New_York'],
	['Oklahoma City, Oklahoma', 35.47, -97.52, 'America/Chicago'],
	['Omaha, Nebraska', 41.26, -95.93, 'America/Chicago'],
	['Orlando, Florida', 28.54, -81.38, 'America/New_York'],
	['Oslo, Norway', 59.91, 10.75, 'Europe/Oslo'],
	['Paris, France', 48.86, 2.35, 'Europe/Paris'],
	['Perth, Australia', -31.95, 115.86, 'Australia/Perth'],
	['Philadelphia, Pennsylvania', 39.95, -75.17, 'America/New_York'],
	['Phoenix, Arizona', 33.45, -112.07, 'America/Phoenix'],
	['Pittsburgh, Pennsylvania', 40.44, -80.0, 'America/New_York'],
	['Portland, Maine', 43.66, -70.26, 'America/New_York'],
	['Portland, Oregon', 45.52, -122.68, 'America/Los_Angeles'],
	['Raleigh, North Carolina', 35.78, -78.64, 'America/New_York'],
	['Reykjavík, Iceland', 64.15, -21.94, 'Atlantic/Reykjavik'],
	['Richmond, Virginia', 37.54, -77.44, 'America/New_York'],
	['Sacramento, California', 38.58, -121.49, 'America/Los_Angeles'],
	['St. Louis, Missouri', 38.63, -90.2, 'America/Chicago'],
	['Salt Lake City, Utah', 40.76, -111.89, 'America/Denver'],
	['San Antonio, Texas', 29.42, -98.49, 'America/Chicago'],
	['San Diego, California', 32.72, -117.16, 'America/Los_Angeles'],
	['San Francisco, California', 37.77, -122.42, 'America/Los_Angeles'],
	['Santiago, Chile', -33.45, -70.67, 'America/Santiago'],
	['São Paulo, Brazil', -23.55, -46.63, 'America/Sao_Paulo'],
	['Seattle, Washington', 47.61, -122.33, 'America/Los_Angeles'],
	['Singapore', 1.35, 103.82, 'Asia/Singapore'],
	['Spokane, Washington', 47.66, -117.43, 'America/Los_Angeles'],
	['Stockholm, Sweden', 59.33, 18.07, 'Europe/Stockholm'],
	['Sydney, Australia', -33.87, 151.21, 'Australia/Sydney'],
	['Tampa, Florida', 27.95, -82.46, 'America/New_York'],
	['Tokyo, Japan', 35.68, 139.69, 'Asia/Tokyo'],
	['Toronto, Ontario', 43.65, -79.38, 'America/Toronto'],
	['Tromsø, Norway', 69.65, 18.96, 'Europe/Oslo'],
	['Tucson, Arizona', 32.22, -110.97, 'America/Phoenix'],
	['Utrecht, Netherlands', 52.09, 5.12, 'Europe/Amsterdam'],
	['Vancouver, British Columbia', 49.28, -123.12, 'America/Vancouver'],
	['Vienna, Austria', 48.21, 16.37, 'Europe/Vienna'],
	['Washington, D.C.', 38.91, -77.04, 'America/New_York'],
	['Winnipeg, Manitoba', 49.9, -97.14, 'America/Winnipeg'],
	['Zürich, Switzerland', 47.38, 8.54, 'Europe/Zurich']
];
export const places: PlaceOnEarth[] = table.map(([name, latitude, longitude, timeZone]) => ({
	name,
	latitude,
	longitude,
	timeZone
}));

const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/** The places whose name, or a word of it, starts with the text; at most `most`. Accents and case do not matter. */
export function findPlaces(text: string, most = 6): PlaceOnEarth[] {
	const wanted = plain(text);
	if (wanted.length < 2) return [];
	const starts = (name: string) => plain(name).startsWith(wanted);
	const within = (name: string) => plain(name).includes(` ${wanted}`);
	return [
		...places.filter(({ name }) => starts(name)),
		...places.filter(({ name }) => !starts(name) && within(name))
	].slice(0, most);
}

/** The places that keep a zone's time: where a device with that clock may be. */
export const placesInZone = (timeZone: string, most = 6): PlaceOnEarth[] =>
	places.filter((place) => place.timeZone === timeZone).slice(0, most);

const mark = (digits: string) => `([-−+]?\\d{1,3}(?:${digits}\\d+)?)`;
/** Two numbers as on a map; with decimal commas they stand apart by a semicolon, a space, or a comma and a space. */
const pairs = [
	new RegExp(`^\\s*${mark('\\.')}\\s*°?\\s*([NS])?\\s*[,;\\s]\\s*${mark('\\.')}\\s*°?\\s*([EW])?\\s*$`, 'iu'),
	new RegExp(`^\\s*${mark(',')}\\s*°?\\s*([NS])?\\s*(?:;|,?\\s)\\s*${mark(',')}\\s*°?\\s*([EW])?\\s*$`, 'iu')
];
interface Coordinates {
	latitude: number;
	longitude: number;
}
function pairIn(text: string): Coordinates | null {
	const match = pairs.map((pair) => pair.exec(text)).find((one) => one !== null);
	if (!match) return null;
	const [, first = '', northSouth, second = '', eastWest] = match;
	const number = (digits: string) => Number(digits.replace('−', '-').replace(',', '.'));
	return {
		latitude: number(first) * (northSouth?.toUpperCase() === 'S' ? -1 : 1),
		longitude: number(second) * (eastWest?.toUpperCase() === 'W' ? -1 : 1)
	};
}
const isOnEarth = ({ latitude, longitude }: Coordinates) => Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;

/**
 * Latitude and longitude in degrees, north and east positive, as written on a map: `45.52, -122.68`, `45,52; -122,68` or
 * `45.52 N 122.68 W`. Null when the text is not a pair of coordinates within range.
 */
export function readCoordinates(text: string): Coordinates | null {
	const pair = pairIn(text);
	return pair && isOnEarth(pair) ? pair : null;
}
/** What is wrong with a text that reads as coordinates and lies off the earth; null for any other. */
export function offEarth(text: string): string | null {
	const pair = pairIn(text);
	if (!pair || isOnEarth(pair)) return null;
	const swapped = isOnEarth({ latitude: pair.longitude, longitude: pair.latitude });
	return `Latitude goes from −90 to 90 degrees, longitude from −180 to 180.${swapped ? ' Latitude comes first: the two may have changed places.' : ''}`;
}

/** Does this device know a time zone by that name? */
export function isZone(timeZone: string): boolean {
	try {
		new Intl.DateTimeFormat('en', { timeZone }).resolvedOptions();
		return true;
	} catch (error) {
		// The only way to ask.
		if (error instanceof RangeError) return false;
		throw error;
	}
}
/** Hours by which the clocks of a zone are ahead of UTC in January: near enough to tell one side of the earth from another. */
function hoursAhead(timeZone: string): number {
	const january = Date.UTC(2027, 0, 15, 12);
	const parts = new Intl.DateTimeFormat('en', {
		timeZone,
		day: 'numeric',
		hour: 'numeric',
		minute: 'numeric',
		hourCycle: 'h23'
	}).formatToParts(january);
	const part = (type: string) => Number(parts.find((each) => each.type === type)?.value);
	return (part('day') - 15) * 24 + part('hour') + part('minute') / 60 - 12;
}
/** Clocks are seldom further than this from the sun, hours. */
const farFromSun = 2.5;
const apart = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/**
 * A first guess at the zone of a place told by coordinates: the device's own where its clock fits the sun there, else that of the
 * nearest place of the list. The person may choose another.
 */
export function guessZone({ latitude, longitude }: Coordinates, device: string): string {
	if (isZone(device) && apart(hoursAhead(device) * 15, longitude) <= farFromSun * 15) return device;
	const shrink = Math.cos((latitude * Math.PI) / 180);
	const distance = (place: PlaceOnEarth) =>
		Math.hypot(place.latitude - latitude, apart(place.longitude, longitude) * shrink);
	return places.reduce((near, place) => (distance(place) < distance(near) ? place : near)).timeZone;
}

/** `45.52° N, 122.68° W` */
export const writeCoordinates = (latitude: number, longitude: number): string =>
	`${Math.abs(latitude).toFixed(2)}° ${latitude < 0 ? 'S' : 'N'}, ${Math.abs(longitude).toFixed(2)}° ${longitude < 0 ? 'W' : 'E'}`;
