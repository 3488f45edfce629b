/**
 * Towns, huts and ski places, and towns at the foot of mountains, whose height the land's mean about them doesn't tell: name, latitude, longitude, height
 * in metres. Source: from memory of maps, heights to about 50 m, coordinates to 0.1°.
 */
export const heights = `
Thredbo, -36.5, 148.3, 1365
Perisher, -36.4, 148.4, 1720
Charlotte Pass, -36.4, 148.3, 1760
Jindabyne, -36.4, 148.6, 920
Cabramurra, -35.9, 148.4, 1490
Mount Hotham, -37.0, 147.1, 1750
Falls Creek, -36.9, 147.3, 1600
Mount Buller, -37.1, 146.4, 1600
Dinner Plain, -37.0, 147.2, 1570
Bright, -36.7, 147.0, 310
Cooma, -36.2, 149.1, 800
Cradle Mountain, -41.6, 145.9, 900
Katoomba, -33.7, 150.3, 1010
Queenstown, -45.0, 168.7, 330
Wanaka, -44.7, 169.1, 290
Cardrona, -44.9, 169.0, 1600
Mount Cook Village, -43.7, 170.1, 760
Whakapapa, -39.2, 175.5, 1120
Zermatt, 46.0, 7.7, 1610
Saas-Fee, 46.1, 7.9, 1800
Davos, 46.8, 9.8, 1560
St. Moritz, 46.5, 9.8, 1820
Grindelwald, 46.6, 8.0, 1030
Interlaken, 46.7, 7.9, 570
Verbier, 46.1, 7.2, 1500
Andermatt, 46.6, 8.6, 1440
Arosa, 46.8, 9.7, 1770
Chamonix, 45.9, 6.9, 1035
Tignes, 45.5, 6.9, 2100
Val Thorens, 45.3, 6.6, 2300
Courchevel, 45.4, 6.6, 1750
Alpe d'Huez, 45.1, 6.1, 1850
Les Deux Alpes, 45.0, 6.1, 1650
Briançon, 44.9, 6.6, 1320
Barcelonnette, 44.4, 6.7, 1130
Grenoble, 45.2, 5.7, 210
Innsbruck, 47.3, 11.4, 575
Kitzbühel, 47.4, 12.4, 760
Sankt Anton, 47.1, 10.3, 1300
Ischgl, 47.0, 10.3, 1375
Sölden, 47.0, 11.0, 1370
Obertauern, 47.2, 13.6, 1740
Zell am See, 47.3, 12.8, 760
Garmisch-Partenkirchen, 47.5, 11.1, 710
Cortina d'Ampezzo, 46.5, 12.1, 1220
Livigno, 46.5, 10.1, 1820
Bormio, 46.5, 10.4, 1225
Bolzano, 46.5, 11.4, 260
Aosta, 45.7, 7.3, 580
Breuil-Cervinia, 45.9, 7.6, 2050
Sestriere, 45.0, 6.9, 2035
Andorra la Vella, 42.5, 1.5, 1020
Pas de la Casa, 42.5, 1.7, 2090
Sierra Nevada, 37.1, -3.4, 2100
Granada, 37.2, -3.6, 690
Zakopane, 49.3, 20.0, 850
Bansko, 41.8, 23.5, 930
Aviemore, 57.2, -3.8, 220
Lillehammer, 61.1, 10.5, 180
Hemsedal, 60.9, 8.6, 650
Geilo, 60.5, 8.2, 800
Finse, 60.6, 7.5, 1220
Åre, 63.4, 13.1, 400
Aspen, 39.2, -106.8, 2400
Vail, 39.6, -106.4, 2480
Breckenridge, 39.5, -106.0, 2925
Leadville, 39.2, -106.3, 3100
Telluride, 37.9, -107.8, 2665
Crested Butte, 38.9, -107.0, 2700
Steamboat Springs, 40.5, -106.8, 2050
Estes Park, 40.4, -105.5, 2290
Denver, 39.7, -105.0, 1610
Colorado Springs, 38.8, -104.8, 1840
Flagstaff, 35.2, -111.7, 2100
Grand Canyon Village, 36.1, -112.1, 2090
Santa Fe, 35.7, -105.9, 2190
Taos, 36.4, -105.6, 2120
Los Alamos, 35.9, -106.3, 2230
Park City, 40.6, -111.5, 2100
Salt Lake City, 40.8, -111.9, 1290
Jackson Hole, 43.5, -110.8, 1900
West Yellowstone, 44.7, -111.1, 2030
Big Sky, 45.3, -111.3, 2200
Sun Valley, 43.7, -114.4, 1800
Mammoth Lakes, 37.6, -119.0, 2400
Bishop, 37.4, -118.4, 1260
Truckee, 39.3, -120.2, 1770
South Lake Tahoe, 38.9, -120.0, 1900
Yosemite Valley, 37.7, -119.6, 1210
Furnace Creek, 36.5, -116.9, -58
Banff, 51.2, -115.6, 1383
Lake Louise, 51.4, -116.2, 1600
Jasper, 52.9, -118.1, 1060
Canmore, 51.1, -115.4, 1310
Whistler, 50.1, -123.0, 670
Mexico City, 19.4, -99.1, 2240
Toluca, 19.3, -99.7, 2660
Bogota, 4.6, -74.1, 2620
Quito, -0.2, -78.5, 2850
Cuenca, -2.9, -79.0, 2550
Huaraz, -9.5, -77.5, 3050
Cusco, -13.5, -72.0, 3400
Arequipa, -16.4, -71.5, 2330
Puno, -15.8, -70.0, 3830
La Paz, -16.5, -68.1, 3640
El Alto, -16.5, -68.2, 4070
Uyuni, -20.5, -66.8, 3660
Potosi, -19.6, -65.8, 4050
Sucre, -19.0, -65.3, 2800
Calama, -22.5, -68.9, 2260
San Pedro de Atacama, -22.9, -68.2, 2410
Bariloche, -41.1, -71.3, 890
Portillo, -32.8, -70.1, 2880
Mendoza, -32.9, -68.8, 750
Sapporo, 43.1, 141.4, 20
Niseko, 42.8, 140.7, 300
Hakuba, 36.7, 137.9, 700
Karuizawa, 36.3, 138.6, 940
Matsumoto, 36.2, 138.0, 600
Kathmandu, 27.7, 85.3, 1350
Pokhara, 28.2, 84.0, 820
Namche Bazaar, 27.8, 86.7, 3440
Leh, 34.2, 77.6, 3500
Manali, 32.2, 77.2, 2050
Shimla, 31.1, 77.2, 2200
Darjeeling, 27.0, 88.3, 2050
Srinagar, 34.1, 74.8, 1590
Gulmarg, 34.1, 74.4, 2650
Skardu, 35.3, 75.6, 2230
Lhasa, 29.7, 91.1, 3650
Shigatse, 29.3, 88.9, 3840
Thimphu, 27.5, 89.6, 2330
Lijiang, 26.9, 100.2, 2400
Shangri-La, 27.8, 99.7, 3280
Kabul, 34.5, 69.2, 1800
Bishkek, 42.9, 74.6, 770
Almaty, 43.3, 76.9, 800
Karakol, 42.5, 78.4, 1750
Murghab, 38.2, 74.0, 3650
Tehran, 35.7, 51.4, 1250
Erzurum, 39.9, 41.3, 1900
Addis Ababa, 9.0, 38.7, 2360
Nairobi, -1.3, 36.8, 1680
Arusha, -3.4, 36.7, 1400
Moshi, -3.4, 37.3, 850
Asmara, 15.3, 38.9, 2330
Ifrane, 33.5, -5.1, 1665
Oukaimeden, 31.2, -7.9, 2650
Imlil, 31.1, -7.9, 1750
Tamanrasset, 22.8, 5.5, 1380
Maseru, -29.3, 27.5, 1600
Semonkong, -29.8, 28.1, 2200
Sani Pass, -29.6, 29.3, 2870
Johannesburg, -26.2, 28.0, 1700
Ulaanbaatar, 47.9, 106.9, 1320
Tromsø, 69.6, 19.0, 10
Bergen, 60.4, 5.3, 20
Ålesund, 62.5, 6.2, 10
Bodø, 67.3, 14.4, 10
Reykjavik, 64.1, -21.9, 40
Akureyri, 65.7, -18.1, 10
Longyearbyen, 78.2, 15.6, 20
Juneau, 58.3, -134.4, 10
Anchorage, 61.2, -149.9, 30
Vancouver, 49.3, -123.1, 30
Milford Sound, -44.7, 167.9, 10
Ushuaia, -54.8, -68.3, 20
Santiago, -33.4, -70.7, 540
Antofagasta, -23.7, -70.4, 40
Papeete, -17.5, -149.6, 10
Nice, 43.7, 7.3, 20
Genoa, 44.4, 8.9, 20
Split, 43.5, 16.4, 20
`;
