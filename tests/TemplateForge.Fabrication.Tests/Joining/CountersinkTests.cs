namespace TemplateForge.Fabrication.Tests.Joining;

public class CountersinkTests
{
    // Sheet-metal designers' handbook (read): to a bend 4 t + r, to an edge 4 t, between two 8 t. Worked for 1.5 mm sheet and a 2 mm bend.
    [Fact]
    public void A_countersink_keeps_clear_of_bends_edges_and_others()
    {
        Assert.Equal(8, Countersink.FromBend(thickness: 1.5, insideRadius: 2));
        Assert.Equal(6, Countersink.FromEdge(thickness: 1.5));
        Assert.Equal(12, Countersink.FromAnother(thickness: 1.5));
    }
}
