/** A town whose sky and clock are known without asking anybody. */
export interface Town {
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
}

/**
 * Big towns, to a tenth of a degree: enough for the length of a day, which is all that the place is
 * for. Values from memory.
 */
const rows = `
Amsterdam 52.4 4.9 Europe/Amsterdam|Rotterdam 51.9 4.5 Europe/Amsterdam|Groningen 53.2 6.6 Europe/Amsterdam
Antwerp 51.2 4.4 Europe/Brussels|Antwerpen 51.2 4.4 Europe/Brussels|Brussels 50.9 4.4 Europe/Brussels|Brüssel 50.9 4.4 Europe/Brussels
Athens 38.0 23.7 Europe/Athens|Athen 38.0 23.7 Europe/Athens|Thessaloniki 40.6 22.9 Europe/Athens
Barcelona 41.4 2.2 Europe/Madrid|Madrid 40.4 -3.7 Europe/Madrid|Valencia 39.5 -0.4 Europe/Madrid|Seville 37.4 -6.0 Europe/Madrid|Bilbao 43.3 -2.9 Europe/Madrid|Malaga 36.7 -4.4 Europe/Madrid
Belfast 54.6 -5.9 Europe/London|London 51.5 -0.1 Europe/London|Birmingham 52.5 -1.9 Europe/London|Manchester 53.5 -2.2 Europe/London|Leeds 53.8 -1.5 Europe/London|Liverpool 53.4 -3.0 Europe/London|Bristol 51.5 -2.6 Europe/London|Cardiff 51.5 -3.2 Europe/London|Edinburgh 56.0 -3.2 Europe/London|Glasgow 55.9 -4.3 Europe/London|Aberdeen 57.1 -2.1 Europe/London|Norwich 52.6 1.3 Europe/London|Plymouth 50.4 -4.1 Europe/London|Newcastle 55.0 -1.6 Europe/London|Southampton 50.9 -1.4 Europe/London|Nottingham 53.0 -1.1 Europe/London|Sheffield 53.4 -1.5 Europe/London
Dublin 53.3 -6.3 Europe/Dublin|Cork 51.9 -8.5 Europe/Dublin|Galway 53.3 -9.1 Europe/Dublin|Limerick 52.7 -8.6 Europe/Dublin|Waterford 52.3 -7.1 Europe/Dublin
Berlin 52.5 13.4 Europe/Berlin|Hamburg 53.6 10.0 Europe/Berlin|München 48.1 11.6 Europe/Berlin|Munich 48.1 11.6 Europe/Berlin|Köln 50.9 7.0 Europe/Berlin|Cologne 50.9 7.0 Europe/Berlin|Frankfurt 50.1 8.7 Europe/Berlin|Stuttgart 48.8 9.2 Europe/Berlin|Leipzig 51.3 12.4 Europe/Berlin|Dresden 51.1 13.7 Europe/Berlin|Hannover 52.4 9.7 Europe/Berlin|Bremen 53.1 8.8 Europe/Berlin|Nürnberg 49.5 11.1 Europe/Berlin|Nuremberg 49.5 11.1 Europe/Berlin|Dortmund 51.5 7.5 Europe/Berlin|Freiburg 48.0 7.8 Europe/Berlin|Rostock 54.1 12.1 Europe/Berlin|Kassel 51.3 9.5 Europe/Berlin|Münster 52.0 7.6 Europe/Berlin|Erfurt 51.0 11.0 Europe/Berlin|Kiel 54.3 10.1 Europe/Berlin|Augsburg 48.4 10.9 Europe/Berlin|Saarbrücken 49.2 7.0 Europe/Berlin
Wien 48.2 16.4 Europe/Vienna|Vienna 48.2 16.4 Europe/Vienna|Graz 47.1 15.4 Europe/Vienna|Linz 48.3 14.3 Europe/Vienna|Salzburg 47.8 13.0 Europe/Vienna|Innsbruck 47.3 11.4 Europe/Vienna
Zürich 47.4 8.5 Europe/Zurich|Zurich 47.4 8.5 Europe/Zurich|Bern 46.9 7.4 Europe/Zurich|Basel 47.6 7.6 Europe/Zurich|Genf 46.2 6.1 Europe/Zurich|Geneva 46.2 6.1 Europe/Zurich|Luzern 47.1 8.3 Europe/Zurich
Paris 48.9 2.4 Europe/Paris|Lyon 45.8 4.8 Europe/Paris|Marseille 43.3 5.4 Europe/Paris|Toulouse 43.6 1.4 Europe/Paris|Bordeaux 44.8 -0.6 Europe/Paris|Lille 50.6 3.1 Europe/Paris|Nantes 47.2 -1.6 Europe/Paris|Strasbourg 48.6 7.8 Europe/Paris|Straßburg 48.6 7.8 Europe/Paris
Rome 41.9 12.5 Europe/Rome|Rom 41.9 12.5 Europe/Rome|Milan 45.5 9.2 Europe/Rome|Mailand 45.5 9.2 Europe/Rome|Naples 40.9 14.3 Europe/Rome|Turin 45.1 7.7 Europe/Rome|Bologna 44.5 11.3 Europe/Rome|Palermo 38.1 13.4 Europe/Rome|Bozen 46.5 11.4 Europe/Rome
Lisbon 38.7 -9.1 Europe/Lisbon|Lissabon 38.7 -9.1 Europe/Lisbon|Porto 41.2 -8.6 Europe/Lisbon
Copenhagen 55.7 12.6 Europe/Copenhagen|Kopenhagen 55.7 12.6 Europe/Copenhagen|Aarhus 56.2 10.2 Europe/Copenhagen|Oslo 59.9 10.8 Europe/Oslo|Bergen 60.4 5.3 Europe/Oslo|Trondheim 63.4 10.4 Europe/Oslo|Stockholm 59.3 18.1 Europe/Stockholm|Gothenburg 57.7 12.0 Europe/Stockholm|Malmö 55.6 13.0 Europe/Stockholm|Helsinki 60.2 24.9 Europe/Helsinki|Tampere 61.5 23.8 Europe/Helsinki|Reykjavik 64.1 -21.9 Atlantic/Reykjavik
Warsaw 52.2 21.0 Europe/Warsaw|Warschau 52.2 21.0 Europe/Warsaw|Krakow 50.1 19.9 Europe/Warsaw|Gdansk 54.4 18.6 Europe/Warsaw|Wroclaw 51.1 17.0 Europe/Warsaw|Prague 50.1 14.4 Europe/Prague|Prag 50.1 14.4 Europe/Prague|Brno 49.2 16.6 Europe/Prague|Bratislava 48.1 17.1 Europe/Bratislava|Budapest 47.5 19.0 Europe/Budapest|Ljubljana 46.1 14.5 Europe/Ljubljana|Zagreb 45.8 16.0 Europe/Zagreb|Belgrade 44.8 20.5 Europe/Belgrade|Bucharest 44.4 26.1 Europe/Bucharest|Sofia 42.7 23.3 Europe/Sofia|Vilnius 54.7 25.3 Europe/Vilnius|Riga 56.9 24.1 Europe/Riga|Tallinn 59.4 24.8 Europe/Tallinn|Kyiv 50.5 30.5 Europe/Kyiv|Luxembourg 49.6 6.1 Europe/Luxembourg|Luxemburg 49.6 6.1 Europe/Luxembourg|Istanbul 41.0 29.0 Europe/Istanbul
New York 40.7 -74.0 America/New_York|Boston 42.4 -71.1 America/New_York|Philadelphia 40.0 -75.2 America/New_York|Washington 38.9 -77.0 America/New_York|Atlanta 33.7 -84.4 America/New_York|Miami 25.8 -80.2 America/New_York|Pittsburgh 40.4 -80.0 America/New_York|Cleveland 41.5 -81.7 America/New_York|Charlotte 35.2 -80.8 America/New_York|Burlington 44.5 -73.2 America/New_York
Detroit 42.3 -83.0 America/Detroit|Chicago 41.9 -87.6 America/Chicago|Minneapolis 45.0 -93.3 America/Chicago|Dallas 32.8 -96.8 America/Chicago|Houston 29.8 -95.4 America/Chicago|Austin 30.3 -97.7 America/Chicago|New Orleans 30.0 -90.1 America/Chicago|Kansas City 39.1 -94.6 America/Chicago|Nashville 36.2 -86.8 America/Chicago|Milwaukee 43.0 -87.9 America/Chicago
Denver 39.7 -105.0 America/Denver|Salt Lake City 40.8 -111.9 America/Denver|Albuquerque 35.1 -106.7 America/Denver|Phoenix 33.4 -112.1 America/Phoenix|Tucson 32.2 -110.9 America/Phoenix|Los Angeles 34.1 -118.2 America/Los_Angeles|San Francisco 37.8 -122.4 America/Los_Angeles|San Diego 32.7 -117.2 America/Los_Angeles|Portland 45.5 -122.7 America/Los_Angeles|Seattle 47.6 -122.3 America/Los_Angeles|Las Vegas 36.2 -115.1 America/Los_Angeles|Anchorage 61.2 -149.9 America/Anchorage|Honolulu 21.3 -157.9 Pacific/Honolulu
Toronto 43.7 -79.4 America/Toronto|Ottawa 45.4 -75.7 America/Toronto|Montreal 45.5 -73.6 America/Toronto|Vancouver 49.3 -123.1 America/Vancouver|Calgary 51.0 -114.1 America/Edmonton|Edmonton 53.5 -113.5 America/Edmonton|Winnipeg 49.9 -97.1 America/Winnipeg|Halifax 44.6 -63.6 America/Halifax|Mexico City 19.4 -99.1 America/Mexico_City|Sao Paulo -23.6 -46.6 America/Sao_Paulo|Buenos Aires -34.6 -58.4 America/Argentina/Buenos_Aires|Santiago -33.4 -70.7 America/Santiago|Bogota 4.7 -74.1 America/Bogota|Lima -12.0 -77.0 America/Lima
Sydney -33.9 151.2 Australia/Sydney|Melbourne -37.8 145.0 Australia/Melbourne|Brisbane -27.5 153.0 Australia/Brisbane|Perth -32.0 115.9 Australia/Perth|Adelaide -34.9 138.6 Australia/Adelaide|Hobart -42.9 147.3 Australia/Hobart|Canberra -35.3 149.1 Australia/Sydney|Darwin -12.5 130.8 Australia/Darwin|Auckland -36.8 174.8 Pacific/Auckland|Wellington -41.3 174.8 Pacific/Auckland|Christchurch -43.5 172.6 Pacific/Auckland|Dunedin -45.9 170.5 Pacific/Auckland
Cape Town -33.9 18.4 Africa/Johannesburg|Kapstadt -33.9 18.4 Africa/Johannesburg|Johannesburg -26.2 28.0 Africa/Johannesburg|Durban -29.9 31.0 Africa/Johannesburg|Nairobi -1.3 36.8 Africa/Nairobi|Lagos 6.5 3.4 Africa/Lagos|Cairo 30.0 31.2 Africa/Cairo
Tokyo 35.7 139.7 Asia/Tokyo|Osaka 34.7 135.5 Asia/Tokyo|Seoul 37.6 127.0 Asia/Seoul|Singapore 1.3 103.8 Asia/Singapore|Hong Kong 22.3 114.2 Asia/Hong_Kong|Delhi 28.6 77.2 Asia/Kolkata|Mumbai 19.1 72.9 Asia/Kolkata|Bangalore 13.0 77.6 Asia/Kolkata|Dubai 25.2 55.3 Asia/Dubai|Tel Aviv 32.1 34.8 Asia/Jerusalem|Manila 14.6 121.0 Asia/Manila|Bangkok 13.8 100.5 Asia/Bangkok
`;

export const towns: readonly Town[] = rows
  .trim()
  .split(/[\n|]/)
  .map((row) => {
    const parts = row.split(' ');
    const [latitude, longitude, timeZone] = parts.slice(-3);
    return {
      name: parts.slice(0, -3).join(' '),
      latitude: Number(latitude),
      longitude: Number(longitude),
      timeZone: timeZone!,
    };
  });

/** The town whose clock a place most likely goes by: the nearest, on a flat map of degrees. */
export function nearestTown(latitude: number, longitude: number): Town {
  const shrink = Math.cos((latitude * Math.PI) / 180);
  const far = (town: Town): number =>
    Math.hypot(town.latitude - latitude, (town.longitude - longitude) * shrink);
  return towns.reduce((best, town) => (far(town) < far(best) ? town : best));
}
