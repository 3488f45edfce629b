/**
 * Mountain and ski towns that the other tables and the world's towns lack or have under another place of the name.
 * Rows as in australia.ts. Source: from memory of maps, rounded to 0.1°. Their heights: src/climate/data/heights.ts.
 */
export const mountains = `
=AU
Charlotte Pass -36.4 148.3
Cabramurra -35.9 148.4
Mount Buller/mt buller -37.1 146.4
=NZ
Cardrona -44.9 169.0
Mount Cook Village/aoraki village -43.7 170.1
Whakapapa -39.2 175.5
=CH
Saas-Fee 46.1 7.9
St. Moritz/saint moritz/sankt moritz 46.5 9.8
Grindelwald 46.6 8.0
Verbier 46.1 7.2
Andermatt 46.6 8.6
Arosa 46.8 9.7
=FR
Tignes 45.5 6.9
Courchevel 45.4 6.6
Alpe d'Huez 45.1 6.1
Les Deux Alpes 45.0 6.1
=AT
Sankt Anton/st anton 47.1 10.3
Ischgl 47.0 10.3
Sölden/soelden 47.0 11.0
Obertauern 47.2 13.6
=IT
Bormio 46.5 10.4
Cervinia/breuil cervinia 45.9 7.6
Sestriere 45.0 6.9
=AD
Pas de la Casa 42.5 1.7
=NO
Finse 60.6 7.5
=US
~Aspen 39.2 -106.8
Vail 39.6 -106.4
Breckenridge 39.5 -106.0
Leadville 39.2 -106.3
Telluride 37.9 -107.8
Crested Butte 38.9 -107.0
Grand Canyon Village 36.1 -112.1
Jackson Hole 43.5 -110.8
West Yellowstone 44.7 -111.1
Sun Valley 43.7 -114.4
Yosemite Valley 37.7 -119.6
Furnace Creek 36.5 -116.9
=CL
Portillo -32.8 -70.1
=JP
Niseko 42.8 140.7
Karuizawa 36.3 138.6
=NP
Namche Bazaar/namche 27.8 86.7
=IN
Darjeeling 27.0 88.3
Gulmarg 34.1 74.4
=PK
Skardu 35.3 75.6
=CN
Shigatse 29.3 88.9
=TJ
Murghab 38.2 74.0
=MA
Oukaimeden 31.2 -7.9
Imlil 31.1 -7.9
=LS
Semonkong -29.8 28.1
=ZA
Sani Pass -29.6 29.3
`;
