using Apprentice.Engine.Quantities;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Apprentice.Engine.Tests.Quantities;

/// <summary>10,000 arguments a function, drawn with a fixed seed. The platform's own functions are good to about 1 unit in the last place (2e-16), the library's Φ to about 3e-16.</summary>
public sealed class RealTests
{
    const int Arguments = 10_000;

    [Fact]
    public void Exp_agrees_with_the_platform_within_1e_15_of_the_value()
    {
        foreach (var x in Between(-700, 700).Concat(Between(-1, 1)))
            Assert.True(Math.Abs(Real.Exp(x) - Math.Exp(x)) <= 1e-15 * Math.Exp(x), $"{x:R}: {Real.Exp(x):R}");
    }

    [Fact]
    public void Exp_fades_out_below_the_smallest_numbers()
    {
        foreach (var x in Between(-745, -700)) Assert.Equal(Math.Exp(x), Real.Exp(x), 5e-320);
        Assert.Equal((1, 0, double.PositiveInfinity), (Real.Exp(0), Real.Exp(-800), Real.Exp(800)));
        Assert.True(double.IsNaN(Real.Exp(double.NaN)));
    }

    [Fact]
    public void Log_agrees_with_the_platform_within_1e_15_of_the_value()
    {
        foreach (var x in Between(-700, 700).Select(Math.Exp).Concat(Between(1e-6, 3)))
            Assert.True(Math.Abs(Real.Log(x) - Math.Log(x)) <= 1e-15 * Math.Abs(Math.Log(x)), $"{x:R}: {Real.Log(x):R}");
    }

    [Fact]
    public void Log_holds_at_the_ends_of_its_range()
    {
        Assert.Equal(Math.Log(double.Epsilon), Real.Log(double.Epsilon), 1e-12);
        Assert.Equal(Math.Log(double.MaxValue), Real.Log(double.MaxValue), 1e-12);
        Assert.Equal((0, double.NegativeInfinity), (Real.Log(1), Real.Log(0)));
        Assert.True(double.IsNaN(Real.Log(-1)));
    }

    [Fact]
    public void Log_to_base_10_and_2_agree_with_the_platform()
    {
        foreach (var x in Between(-300, 300).Select(Math.Exp))
        {
            Assert.Equal(Math.Log10(x), Real.Log10(x), 1e-13);
            Assert.Equal(Math.Log2(x), Real.Log2(x), 1e-13);
        }
    }

    [Fact]
    public void Log_undoes_exp()
    {
        foreach (var x in Between(-700, 700)) Assert.Equal(x, Real.Log(Real.Exp(x)), 2e-13);
    }

    [Fact]
    public void Phi_agrees_with_the_library_within_7e_16()
    {
        foreach (var x in Between(-9.5, 9.5)) Assert.Equal(Normal.CDF(0, 1, x), Real.Phi(x), 7e-16);
    }

    [Fact]
    public void Phi_keeps_its_digits_where_it_is_small()
    {
        foreach (var x in Between(-8.99, 0)) Assert.Equal(1, Real.Phi(x) / Normal.CDF(0, 1, x), 2e-14);
    }

    [Fact]
    public void Phi_of_x_and_of_minus_x_add_up_to_1()
    {
        foreach (var x in Between(0, 10)) Assert.Equal(1, Real.Phi(x) + Real.Phi(-x), 2e-16);
    }

    [Fact]
    public void Phi_never_falls_and_never_leaves_0_to_1()
    {
        var last = 0.0;
        foreach (var x in Between(-9.5, 9.5).Order())
        {
            var here = Real.Phi(x);
            Assert.True(here >= last && here <= 1, $"{x:R}");
            last = here;
        }
    }

    [Fact]
    public void Density_agrees_with_the_library()
    {
        foreach (var x in Between(-10, 10)) Assert.Equal(Normal.PDF(0, 1, x), Real.Density(x), 4e-16);
    }

    [Fact]
    public void The_integral_of_phi_agrees_with_its_formula_in_the_library()
    {
        foreach (var x in Between(-9.5, 50)) Assert.Equal((x * Normal.CDF(0, 1, x)) + Normal.PDF(0, 1, x), Real.PhiIntegral(x), 1e-15 * (1 + Math.Abs(x)));
    }

    [Fact]
    public void The_integral_of_phi_agrees_with_adaptive_quadrature()
    {
        foreach (var x in Between(-6, 6).Take(200))
            Assert.Equal(GaussKronrodRule.Integrate(t => Normal.CDF(0, 1, t), -12, x, out _, out _, 1e-13), Real.PhiIntegral(x), 1e-12);
    }

    static List<double> Between(double low, double high)
    {
        var rng = new Rng(20240);
        return [.. Enumerable.Range(0, Arguments).Select(_ => low + ((high - low) * rng.Unit()))];
    }
}
