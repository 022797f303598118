// A sentence that forbids a danger tells of none; one that only sounds like it does.
#include "knowledge/words/forbidden.hpp"

#include "formula/hazards/hazards.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace forbidden_test {

TEST_CASE("what a sentence forbids is no advice, in every tongue") {
    for (const std::string said : {"Never thaw on the counter.",
                                   "Don't defrost the meat at room temperature.",
                                   "Don't let the links sit in the sun.",
                                   "Do not leave the mass out of the fridge for more than 20 minutes.",
                                   "You must never wash the chicken.",
                                   "Please do not taste the raw mix.",
                                   "Never serve it pink in the middle.",
                                   "Never eat it raw.",
                                   "Avoid leaving it at room temperature.",
                                   "Never store it in a mason jar.",
                                   "Do not reuse the marinade from the meat.",
                                   "Never cut the salad on the same board.",
                                   "Niemals auf der Arbeitsplatte auftauen.",
                                   "Auf keinen Fall bei Zimmertemperatur auftauen lassen.",
                                   "Bei Raumtemperatur nicht stehen lassen.",
                                   "Ne jamais décongeler à température ambiante.",
                                   "Ne laissez jamais la viande au soleil.",
                                   "No descongelar nunca a temperatura ambiente.",
                                   "No dejes la masa al sol.",
                                   "Non scongelare mai a temperatura ambiente.",
                                   "Não deixe a massa ao sol.",
                                   "Nigdy nie rozmrażać na blacie.",
                                   "Niet bij kamertemperatuur laten staan.",
                                   "Thaw in the fridge, never on the counter.",
                                   "Thaw in the fridge instead of on the counter.",
                                   "Décongeler au frigo, jamais à température ambiante.",
                                   "Non si deve mai scongelare a temperatura ambiente.",
                                   "Nikdy nerozmrazujte při pokojové teplotě.",
                                   "Tezgahta asla çözdürmeyin."}) {
        CAPTURE(said);
        CHECK(told_hazards(said, knowledge()).empty());
    }
}

TEST_CASE("what only sounds forbidden is told") {
    for (const std::string said : {"Never mind the fridge, thaw on the counter.",
                                   "Do not chill it before leaving it on the counter overnight.",
                                   "Do not refrigerate; leave at room temperature for 5 hours.",
                                   "Don't forget to hang the links in the cellar for a week.",
                                   "Do not be afraid to serve it pink in the middle.",
                                   "Never cook it through but serve it pink in the middle.",
                                   "Do not leave it at room temperature for less than 8 hours.",
                                   "Do not leave it at room temperature for more than 12 hours.",
                                   "No problem leaving it at room temperature.",
                                   "So as not to dry it, leave it at room temperature.",
                                   "Damit sie nicht austrocknen, bei Zimmertemperatur auftauen.",
                                   "Die Würste nicht zu eng zwei Wochen aufhängen.",
                                   "Nicht in den Kühlschrank, sondern bei Zimmertemperatur stehen lassen.",
                                   "N'oubliez pas de suspendre deux jours.",
                                   "Pour ne pas dessécher, laisser à température ambiante.",
                                   "No olvides dejar la masa a temperatura ambiente.",
                                   "Non dimenticate di lasciare l'impasto al sole.",
                                   "Não esqueça de deixar ao sol.",
                                   "It never hurts to leave the mass at room temperature.",
                                   "Nie im Kühlschrank, bei Zimmertemperatur auftauen.",
                                   "Do not hesitate to rinse the chicken.",
                                   "Re-freeze what you do not use.",
                                   "Never let them dry out when they hang in the cellar for two weeks."}) {
        CAPTURE(said);
        CHECK_FALSE(told_hazards(said, knowledge()).empty());
    }
}

}  // namespace forbidden_test
