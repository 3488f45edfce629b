/**
 * The European mainland and its islands: countries, regions, parks and towns that campers use.
 * Rows as in australia.ts. Source: from memory of maps, rounded to 0.1°; regions by a point in their middle.
 */
export const europe = `
=EU
Europe 48.0 9.0
Scandinavia 61.0 14.0
The Alps/~alps 46.6 10.0
Pyrenees/the pyrenees 42.7 0.8
Balkans/the balkans 43.0 20.5
Mediterranean/~the med 40.0 10.0
Dolomites/the dolomites 46.5 11.8
=FR
France 46.5 2.5
Paris 48.9 2.4
Brittany/bretagne 48.2 -2.9
Normandy/normandie 49.0 0.0
Picardy 49.8 2.8
~Champagne 48.9 4.3
Alsace 48.3 7.5
Lorraine 48.8 6.2
Vosges 48.1 6.9
~Burgundy/bourgogne 47.1 4.5
~Loire/loire valley/the loire 47.4 0.7
Vendee 46.7 -1.4
Charente 45.8 0.0
La Rochelle/ile de re 46.2 -1.2
Dordogne/perigord/the dordogne 45.0 0.7
Limousin 45.7 1.6
Auvergne 45.6 3.1
Massif Central 45.0 3.0
~Jura 46.8 5.8
Savoie/savoy/haute savoie 45.8 6.5
Chamonix/mont blanc 45.9 6.9
Annecy 45.9 6.1
Grenoble 45.2 5.7
Ardeche 44.6 4.4
Provence/verdon 43.8 5.8
cote d'azur/french riviera/riviera 43.5 7.0
Camargue/the camargue 43.5 4.6
Languedoc 43.6 3.2
Roussillon 42.6 2.6
~Tarn 44.0 2.2
Gascony 43.7 0.3
Aquitaine 44.5 -0.3
~Landes/les landes 44.0 -0.9
Basque Country 43.1 -2.0
Biarritz 43.5 -1.6
Corsica/~corse 42.1 9.1
Bordeaux 44.8 -0.6
Toulouse 43.6 1.4
Lyon 45.8 4.8
Marseille/marseilles 43.3 5.4
~Nice 43.7 7.3
Cannes 43.6 7.0
Montpellier 43.6 3.9
Perpignan 42.7 2.9
Nantes 47.2 -1.6
Rennes 48.1 -1.7
Lille 50.6 3.1
Calais 51.0 1.9
Strasbourg 48.6 7.7
Dijon 47.3 5.0
~Tours 47.4 0.7
=ES
Spain/espana 40.0 -3.7
Andalusia/andalucia 37.4 -4.8
Costa del Sol/malaga 36.7 -4.4
Costa Brava 41.9 3.1
Costa Blanca/alicante 38.4 -0.5
Costa de la Luz/cadiz/tarifa 36.4 -6.1
Catalonia/catalunya 41.7 1.6
Galicia 42.7 -8.0
Asturias 43.3 -6.0
Cantabria/picos/picos de europa 43.2 -4.5
Navarra/~navarre 42.7 -1.6
Rioja/la rioja 42.3 -2.5
Aragon 41.5 -0.7
Castile/castilla 41.5 -4.5
Extremadura 39.2 -6.1
~Murcia 38.0 -1.2
Valencia 39.5 -0.4
Seville/sevilla 37.4 -6.0
Granada/sierra nevada 37.2 -3.6
Cordoba 37.9 -4.8
Almeria/cabo de gata 36.8 -2.4
Madrid 40.4 -3.7
Barcelona 41.4 2.2
Bilbao 43.3 -2.9
San Sebastian 43.3 -2.0
Santander 43.5 -3.8
Zaragoza 41.7 -0.9
Salamanca 41.0 -5.7
Balearics/mallorca/majorca 39.6 3.0
Ibiza 38.9 1.4
Menorca 40.0 4.1
Canary Islands/canaries/the canaries 28.2 -15.8
Tenerife 28.3 -16.5
Gran Canaria 28.0 -15.6
Lanzarote 29.0 -13.6
Fuerteventura 28.4 -14.0
=PT
Portugal 39.6 -8.0
Algarve/the algarve 37.1 -8.2
Lisbon/lisboa 38.7 -9.1
Porto/oporto 41.1 -8.6
Alentejo 38.3 -7.9
Sagres 37.0 -8.9
~Faro 37.0 -7.9
Nazare/peniche/ericeira 39.4 -9.2
Serra da Estrela 40.3 -7.6
Madeira 32.7 -17.0
Azores/the azores 38.0 -27.0
=AD
Andorra 42.5 1.5
=MC
Monaco 43.7 7.4
=IT
Italy/italia 42.8 12.6
Tuscany/toscana 43.4 11.2
Umbria 42.9 12.5
Lazio 42.0 12.8
Liguria 44.2 8.8
Lombardy 45.6 9.8
Piedmont/piemonte 45.0 8.0
Veneto 45.5 11.8
South Tyrol/sudtirol/alto adige 46.6 11.4
Trentino 46.1 11.1
Friuli 46.1 13.1
Emilia Romagna/~emilia 44.5 11.2
~Marche 43.4 13.2
Abruzzo 42.2 13.8
Molise 41.6 14.6
Puglia/apulia 40.9 16.8
Basilicata 40.5 16.1
Calabria 38.9 16.4
Campania 40.8 14.6
Sardinia/sardegna 40.0 9.0
Sicily/sicilia 37.6 14.2
Lake Garda/garda 45.6 10.7
Lake Como/~como 46.0 9.3
Rome 41.9 12.5
Milan 45.5 9.2
Turin 45.1 7.7
Venice 45.4 12.3
~Florence 43.8 11.3
Bologna 44.5 11.3
Naples 40.9 14.3
Palermo 38.1 13.4
Verona 45.4 11.0
Genoa 44.4 8.9
Bolzano 46.5 11.4
Aosta 45.7 7.3
=SM
San Marino 43.9 12.5
=MT
Malta 35.9 14.4
=DE
Germany/deutschland 51.0 10.3
Bavaria/bayern 48.9 11.5
Black Forest/schwarzwald 48.2 8.2
Baden Wurttemberg/swabia 48.6 9.1
Allgau 47.6 10.3
Lake Constance/bodensee 47.6 9.4
Franconia/franken 49.7 11.0
Hesse/hessen 50.6 9.0
Saxony/sachsen 51.0 13.4
Thuringia 50.9 11.0
Harz/the harz 51.8 10.6
Lower Saxony/niedersachsen 52.8 9.1
Schleswig Holstein 54.2 9.7
Mecklenburg 53.7 12.6
Rugen/ruegen 54.4 13.4
Brandenburg 52.4 13.4
Rhineland/moselle/mosel/eifel 50.2 6.9
Westphalia/nrw 51.5 7.5
Saarland 49.4 7.0
East Frisia/ostfriesland 53.5 7.5
North Sea Coast 53.9 8.5
Baltic Coast/the baltic 54.2 12.0
Berlin 52.5 13.4
Hamburg 53.6 10.0
Munich/munchen 48.1 11.6
~Cologne/koln 50.9 7.0
Frankfurt 50.1 8.7
Stuttgart 48.8 9.2
Nuremberg 49.5 11.1
Dresden 51.1 13.7
Leipzig 51.3 12.4
Hanover/hannover 52.4 9.7
Bremen 53.1 8.8
Freiburg 48.0 7.8
~Essen 51.5 7.0
=NL
Netherlands/the netherlands/holland/nederland 52.2 5.5
Amsterdam 52.4 4.9
Rotterdam 51.9 4.5
Utrecht 52.1 5.1
Friesland 53.1 5.8
Zeeland 51.5 3.8
Texel 53.1 4.8
Veluwe/the veluwe 52.2 5.8
Drenthe 52.9 6.6
Limburg 51.2 5.9
=BE
Belgium 50.6 4.6
Ardennes/the ardennes 50.1 5.6
Flanders 51.0 3.8
Wallonia 50.3 5.0
Brussels 50.8 4.4
Antwerp 51.2 4.4
Bruges 51.2 3.2
Ghent 51.1 3.7
=LU
Luxembourg 49.7 6.1
=CH
Switzerland/schweiz 46.8 8.2
Zurich 47.4 8.5
Geneva 46.2 6.1
Bern 46.9 7.4
Basel 47.6 7.6
Interlaken/bernese oberland 46.6 7.9
Ticino 46.2 8.8
Valais/zermatt 46.1 7.6
Graubunden/engadin 46.6 9.6
Lucerne 47.1 8.3
=LI
Liechtenstein 47.2 9.5
=AT
Austria/osterreich 47.5 14.0
Vienna/wien 48.2 16.4
Tyrol/tirol 47.2 11.4
Salzburg 47.8 13.0
Carinthia/karnten 46.7 13.9
Styria 47.2 14.7
Vorarlberg 47.2 9.9
Innsbruck 47.3 11.4
Graz 47.1 15.4
Linz 48.3 14.3
=DK
Denmark/danmark 56.0 9.5
Jutland/jylland 56.2 9.2
Zealand 55.5 11.8
Funen 55.3 10.4
Bornholm 55.1 14.9
Copenhagen 55.7 12.6
Skagen 57.7 10.6
Faroe Islands/faroes 62.0 -6.8
=NO
Norway/norge 61.5 9.0
Oslo 59.9 10.8
Bergen 60.4 5.3
Trondheim 63.4 10.4
Stavanger 59.0 5.7
Tromso 69.6 18.9
Lofoten/lofotens/lofoten islands 68.2 14.0
North Cape/nordkapp 71.0 25.8
Hardangervidda/hardanger 60.3 7.3
Jotunheimen 61.6 8.3
Geiranger/fjords/the fjords 62.0 7.0
Svalbard 78.2 15.6
=SE
Sweden/sverige 60.5 15.5
Stockholm 59.3 18.1
Gothenburg 57.7 12.0
Malmo/skane/scania 55.7 13.3
Smaland 57.1 14.8
Gotland 57.5 18.5
Oland 56.7 16.7
Dalarna 60.8 14.6
Lapland/swedish lapland/kiruna 67.9 20.2
Jamtland 63.2 14.2
=FI
Finland/suomi 62.5 26.0
Helsinki 60.2 24.9
Tampere 61.5 23.8
Turku 60.5 22.3
Oulu 65.0 25.5
Rovaniemi/finnish lapland 66.5 25.7
Finnish Lakeland/~lakeland 62.0 28.0
Aland 60.2 20.0
=IS
Iceland 64.8 -18.5
Reykjavik 64.1 -21.9
Akureyri 65.7 -18.1
=GL
Greenland 65.0 -48.0
=EE
Estonia 58.7 25.5
Tallinn 59.4 24.8
=LV
Latvia 56.9 25.0
Riga 56.9 24.1
=LT
Lithuania 55.3 23.9
Vilnius 54.7 25.3
=PL
Poland/polska 52.1 19.4
Warsaw 52.2 21.0
Krakow/cracow 50.1 19.9
Gdansk 54.4 18.6
Wroclaw 51.1 17.0
Masuria/mazury 53.9 21.6
Tatra/tatras/zakopane/the tatras 49.3 20.0
Poznan 52.4 16.9
=CZ
Czechia/czech republic 49.8 15.5
Prague 50.1 14.4
Bohemia 49.5 14.3
Moravia 49.3 17.0
Brno 49.2 16.6
=SK
Slovakia 48.7 19.6
Bratislava 48.1 17.1
=HU
Hungary 47.2 19.4
Budapest 47.5 19.0
Balaton/lake balaton 46.8 17.8
=SI
Slovenia 46.1 14.8
Ljubljana 46.1 14.5
~Bled/lake bled/bohinj 46.3 14.1
=HR
Croatia/hrvatska 44.5 16.0
Istria 45.2 13.9
Dalmatia 43.5 16.5
~split 43.5 16.4
Dubrovnik 42.7 18.1
Zagreb 45.8 16.0
Zadar 44.1 15.2
Krk 45.1 14.6
=BA
Bosnia/bosnia and herzegovina/sarajevo 43.9 18.2
=ME
Montenegro 42.8 19.2
=RS
Serbia/belgrade 44.3 20.8
=XK
Kosovo 42.6 20.9
=MK
North Macedonia/macedonia 41.6 21.7
=AL
Albania 41.1 20.0
Tirana 41.3 19.8
=GR
Greece/hellas 39.0 22.5
Athens 38.0 23.7
Crete 35.2 24.9
Peloponnese/the peloponnese 37.4 22.3
Corfu 39.6 19.8
Rhodes 36.2 28.0
Thessaloniki 40.6 22.9
Halkidiki 40.3 23.4
Cyclades/naxos/santorini 37.0 25.4
Epirus 39.6 20.7
Lefkada 38.7 20.6
=CY
Cyprus 35.0 33.2
=BG
Bulgaria 42.7 25.3
~Sofia 42.7 23.3
~Varna 43.2 27.9
=RO
Romania 45.9 25.0
Transylvania 46.4 24.0
Bucharest 44.4 26.1
Carpathians/the carpathians 47.0 25.0
=MD
Moldova 47.2 28.5
=UA
Ukraine 49.0 31.5
Kyiv/kiev 50.5 30.5
=BY
Belarus 53.6 28.0
=RU
Russia 56.0 40.0
Moscow 55.8 37.6
Siberia 58.0 90.0
=TR
~Turkey/turkiye 39.0 35.0
Istanbul 41.0 29.0
Ankara 39.9 32.9
Antalya 36.9 30.7
Cappadocia 38.6 34.8
Bodrum 37.0 27.4
=GE
~Georgia 42.1 43.5
Tbilisi 41.7 44.8
=AM
Armenia 40.2 44.9
=AZ
Azerbaijan 40.3 47.7
`;
