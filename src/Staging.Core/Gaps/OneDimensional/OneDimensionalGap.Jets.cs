namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// What heats the grain: the gas behind the nozzle plane, and the jets of the chambers where they come to it.
/// </summary>
internal sealed partial class OneDimensionalGap
{
    /// <summary>Whether the core of a jet reaches the throat.</summary>
    public bool CoreReaches
    {
        get
        {
            var jet = new SourceJet(p, Slide);
            foreach (ChamberVessel chamber in chambers)
            {
                ChamberOpening mouth = chamber.Mouth;
                if (mouth.IsOpen && jet.CoreReaches(mouth.Opening.Diameter, mouth.Chamber.T, mouth.Chamber.Gas.R))
                    return true;
            }

            return false;
        }
    }

    /// <summary>Heat transfer to the grain now, with the jets of the last step.</summary>
    public GrainHeating Heating()
    {
        Zone nozzle = Nozzle(out double pressure);
        var heating = new GrainHeating(nozzle, pressure, SpeedAtNozzle, p);
        var jet = new SourceJet(p, Slide);
        foreach (ChamberVessel chamber in chambers)
        {
            ChamberOpening mouth = chamber.Mouth;
            double diameter = mouth.Opening.Diameter;
            if (mouth.IsOpen && jet.Arrives(diameter))
                heating = heating.Or(jet.At(mouth.Mass * p.Profile.FirstArea, mouth.Opening.Area, diameter, mouth.Chamber.T,
                    mouth.Chamber.Gas.R, mouth.Fraction), p);
        }

        return heating;
    }
}
