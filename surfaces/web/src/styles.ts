import "./styles/font.css";
import "./styles/base.css";
import "./styles/layout.css";
import "./styles/greens.css";
import "./styles/parts.css";
import "./styles/charts.css";
import "./styles/trials.css";
import "./styles/print.css";
