namespace Stillwall.Web.Charts; internal static class Nothing; 
